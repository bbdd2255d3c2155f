import type { AlignType, RootContent, Table } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import type { JSX } from 'preact';

/** What a hover says, as elements. What is no text, list or table in it is shown as it is typed, never as markup. */
export function Markdown({ text }: { text: string }) {
  const { children } = fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });
  return <>{children.map(elementOf)}</>;
}

function elementOf(node: RootContent): JSX.Element | string | null {
  switch (node.type) {
    case 'text':
      return node.value;
    case 'html':
      return node.value;
    case 'inlineCode':
      return <code>{node.value}</code>;
    case 'code':
      return (
        <pre>
          <code>{node.value}</code>
        </pre>
      );
    case 'paragraph':
      return <p>{node.children.map(elementOf)}</p>;
    case 'heading':
      return <p>{node.children.map(elementOf)}</p>;
    case 'strong':
      return <strong>{node.children.map(elementOf)}</strong>;
    case 'emphasis':
      return <em>{node.children.map(elementOf)}</em>;
    case 'list':
      return <ul>{node.children.map(elementOf)}</ul>;
    case 'listItem':
      return <li>{node.children.map(elementOf)}</li>;
    case 'table':
      return <TableOf table={node} />;
    case 'link':
      return <>{node.children.map(elementOf)}</>;
    default:
      return 'children' in node ? <>{node.children.map(elementOf)}</> : null;
  }
}

function TableOf({ table: { align, children } }: { table: Table }) {
  const [head, ...rows] = children;
  const classOf = (column: number) => classes[align?.[column] ?? 'left'];
  return (
    <table>
      <thead>
        <tr>
          {head?.children.map((cell, column) =>
            cell.children.length > 0 ? (
              <th scope="col" class={classOf(column)}>
                {cell.children.map(elementOf)}
              </th>
            ) : (
              <td></td>
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr>
            {row.children.map((cell, column) => (
              <td class={classOf(column)}>{cell.children.map(elementOf)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const classes: Record<NonNullable<AlignType>, string | undefined> = {
  left: undefined,
  right: 'right',
  center: 'centre',
};
