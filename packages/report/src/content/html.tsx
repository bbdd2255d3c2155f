import { VerdictMark } from '../parts/verdict.js';
import type { Block, Item, Span, Text } from './blocks.js';

/** Blocks as elements. Drawings and charts have elements of their own: they are left to the report. */
export function BlockList({ blocks }: { blocks: readonly Block[] }) {
  return (
    <>
      {blocks.map((block, index) => (
        <BlockElement block={block} id={`block-${index + 1}`} />
      ))}
    </>
  );
}

function BlockElement({ block, id }: { block: Block; id: string }) {
  switch (block.kind) {
    case 'heading': {
      const Heading = `h${block.level}` as const;
      return <Heading>{block.text}</Heading>;
    }
    case 'paragraph':
      return (
        <p>
          <TextElement text={block.text} />
        </p>
      );
    case 'list': {
      const List = block.numbered ? 'ol' : 'ul';
      return (
        <List class="changes">
          {block.items.map((item) => (
            <ItemElement item={item} />
          ))}
        </List>
      );
    }
    case 'table':
      return (
        <div class="scroll" tabIndex={0} role="region" aria-labelledby={id}>
          <table>
            <thead>
              <tr>
                {block.head.map((cell, index) => (
                  <th scope="col" id={index === 0 ? id : undefined}>
                    <TextElement text={cell} />
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {block.rows.map(([first, ...rest]) => (
                <tr>
                  <th scope="row">
                    <TextElement text={first!} />
                  </th>
                  {rest.map((cell) => (
                    <td>
                      <TextElement text={cell} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      );
    case 'drawings':
    case 'chart':
      return null;
  }
}

function ItemElement({ item }: { item: Item }) {
  const [first, ...rest] = item;
  return (
    <li>
      <TextElement text={first!} />
      {rest.map((line) => (
        <span class="of">
          <TextElement text={line} />
        </span>
      ))}
    </li>
  );
}

function TextElement({ text }: { text: Text }) {
  return (
    <>
      {text.map((span, index) => (
        <>
          {index > 0 && ' '}
          <SpanElement span={span} />
        </>
      ))}
    </>
  );
}

function SpanElement({ span }: { span: Span }) {
  if (typeof span === 'string') return <>{span}</>;
  if ('verdict' in span) return <VerdictMark verdict={span.verdict} word={span.word} />;
  if (span.as === 'soft') return <span class="kindof">{span.text}</span>;
  return span.as === 'code' ? <code>{span.text}</code> : <strong>{span.text}</strong>;
}
