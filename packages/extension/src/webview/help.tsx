const keys: readonly (readonly [readonly string[], string])[] = [
  [['Tab'], 'into a drawing, and on to the next'],
  [['←', '→', '↑', '↓'], 'to the nearest piece in that direction'],
  [['Page Up', 'Page Down'], 'from piece to piece, through all of a drawing'],
  [['Home', 'End'], 'to the first and the last piece'],
  [['Enter'], 'to the source of the piece'],
  [['Space'], 'into the figures of the piece; Escape leads back'],
  [['Alt ←', '→', '↑', '↓'], 'moves the piece on a plan, and writes it after a pause; Escape takes it back'],
  [['+', '−', '0'], 'larger, smaller, whole'],
  [['Shift ←', '→', '↑', '↓'], 'moves what is seen'],
];

export function KeysHelp() {
  return (
    <details>
      <summary>Keys</summary>
      <dl class="keys">
        {keys.map(([names, does]) => (
          <>
            <dt>
              {names.map((name) => (
                <>
                  <kbd>{name}</kbd>{' '}
                </>
              ))}
            </dt>
            <dd>{does}</dd>
          </>
        ))}
      </dl>
    </details>
  );
}
