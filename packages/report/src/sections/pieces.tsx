import type { Assessment, Finding } from '@boothwright/fit';
import { Findings } from '../parts/findings.js';
import { VerdictMark } from '../parts/verdict.js';
import { worst, type Units } from '../words.js';

/** What is left to walk through, and what is said of it. */
export function Walkways(props: { assessment: Assessment; findings: readonly Finding[]; units: Units }) {
  const { assessment, findings, units } = props;
  return (
    <section>
      <h2>Walkways</h2>
      {assessment.walkways.length === 0 && <p>The file names no walkway, so none was checked.</p>}
      {assessment.walkways.length > 0 && (
        <table>
          <caption>Clear widths</caption>
          <thead>
            <tr>
              <th scope="col">Walkway</th>
              <th scope="col">Clear</th>
              <th scope="col">How it comes about</th>
              <th scope="col">Result</th>
            </tr>
          </thead>
          <tbody>
            {assessment.walkways.map(({ name, clear, terms }) => (
              <tr>
                <th scope="row">{name}</th>
                <td>{clear === undefined ? 'cannot say' : units.length(clear)}</td>
                <td class="terms">{terms}</td>
                <td>{resultOf(assessment, name)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <Findings findings={findings} passCaption="What passes on the walkways" />
    </section>
  );
}

export function Skirts({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <section>
      <h2>Skirt</h2>
      <Findings findings={findings} passCaption="What passes on the skirt" />
    </section>
  );
}

/** Furniture, room, sight, platforms, access: what belongs to no workstation. */
export function OtherFindings({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <section>
      <h2>Other results</h2>
      <Findings findings={findings} passCaption="What else passes" />
    </section>
  );
}

function resultOf({ findings }: Assessment, walkway: string) {
  const own = findings.filter(({ subject }) => subject.kind === 'walkway' && subject.name === walkway);
  return own.length > 0 ? <VerdictMark verdict={worst(own.map(({ verdict }) => verdict))} /> : 'not checked';
}
