import type { Finding } from '@boothwright/fit';

/** What the report is not. */
export function Cautions({ findings }: { findings: readonly Finding[] }) {
  const own = [...new Set(findings.flatMap(({ caution }) => caution ?? []))];
  return (
    <section class="cautions">
      <h2>Cautions</h2>
      <p>
        This is a planning aid. It checks figures on paper, not the built booth. Your local building or fire official,
        and licensed professionals, decide. A width that is not below a published figure may still be refused.
      </p>
      <p>
        The body figures describe soldiers of working age. For a general public, widths, depths and weight run low. Try
        the booth with the people who will use it before anything is cut or bought.
      </p>
      {own.length > 0 && (
        <ul>
          {own.map((caution) => (
            <li>{caution}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
