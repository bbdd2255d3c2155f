import { Chart } from '../parts/chart.js';
import { FigureElement } from '../parts/figure.js';
import { VerdictMark } from '../parts/verdict.js';
import type { Block, FiguresBlock, Item, Span, TableBlock, Text } from './blocks.js';

/** Blocks as elements. `id` starts the ids of what is inside. */
export function BlockList({ blocks, id = 'block' }: { blocks: readonly Block[]; id?: string }) {
  return (
    <>
      {blocks.map((block, index) => (
        <BlockElement block={block} id={`${id}-${index + 1}`} />
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
        <List class="items">
          {block.items.map((item) => (
            <ItemElement item={item} />
          ))}
        </List>
      );
    }
    case 'table':
      return <TableElement table={block} id={id} />;
    case 'figures':
      return <FigureRow row={block} id={id} />;
    case 'charts':
      return (
        <div class="charts">
          {block.charts.map((chart, index) => (
            <Chart chart={chart} id={`${id}-${index + 1}`} />
          ))}
        </div>
      );
    case 'page':
    case 'drawn':
      return (
        <section class={block.kind}>
          <BlockList blocks={block.blocks} id={id} />
        </section>
      );
    case 'more':
      return (
        <details class="more">
          <summary>{block.title}</summary>
          <BlockList blocks={block.blocks} id={id} />
        </details>
      );
  }
}

/** More columns than these may not fit on a phone: then the table scrolls by itself. */
const COLUMNS_THAT_FIT = 3;

function TableElement({ table: { caption, head, rows }, id }: { table: TableBlock; id: string }) {
  const table = (
    <table class={head.length > COLUMNS_THAT_FIT ? 'broad' : undefined}>
      <caption id={id}>{caption}</caption>
      <thead>
        <tr>
          {head.map((cell) => (
            <th scope="col">
              <TextElement text={cell} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([first, ...rest]) => (
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
  );
  if (head.length <= COLUMNS_THAT_FIT) return table;
  return (
    <div class="scroll" tabIndex={0} role="region" aria-labelledby={id}>
      {table}
    </div>
  );
}

function FigureRow({ row: { figures }, id }: { row: FiguresBlock; id: string }) {
  return (
    <div class="figures">
      {figures.map((figure, index) => (
        <FigureElement figure={figure} id={`${id}-${index + 1}`} />
      ))}
    </div>
  );
}

/** What begins with a verdict carries it at its edge. */
function ItemElement({ item }: { item: Item }) {
  const [first, ...rest] = item;
  const [span] = first!;
  return (
    <li class={rest.length > 0 && typeof span === 'object' && 'verdict' in span ? span.verdict : undefined}>
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
  if (span.as === 'soft') return <span class="soft">{span.text}</span>;
  return span.as === 'code' ? <code>{span.text}</code> : <strong>{span.text}</strong>;
}
