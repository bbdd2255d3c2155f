import type { Assessment, Finding, Served, WorkstationFigures } from '@boothwright/fit';
import { matrixFindings, type Arrangement } from '../arrange.js';
import { Findings } from '../parts/findings.js';
import { VerdictMark } from '../parts/verdict.js';
import { columnsOf, concerns, isIn, rowsOf, type Column, type Row } from '../telling/matrix.js';
import { titleOf } from '../titles.js';
import { percent, postureWord, worst } from '../words.js';

/** Each workstation: who passes what at a glance, then each finding in words. */
export function Workstations({ assessment, arrangement }: { assessment: Assessment; arrangement: Arrangement }) {
  const { workstations } = assessment.booth;
  if (workstations.length === 0) return null;
  return (
    <section>
      <h2>Workstations</h2>
      {workstations.map(({ name }, index) => (
        <section>
          <h3>{name}</h3>
          <Matrix
            id={`matrix-${index + 1}`}
            figures={assessment.workstations.find((figures) => figures.name === name)}
            station={name}
            findings={matrixFindings(assessment, name)}
          />
          <Findings findings={arrangement.stations.get(name)!} passCaption={`What passes at ${name}`} />
        </section>
      ))}
    </section>
  );
}

function Matrix(props: { id: string; figures?: WorkstationFigures; station: string; findings: readonly Finding[] }) {
  const { id, station, findings } = props;
  const served = props.figures?.served ?? [];
  const columns = columnsOf(served, findings);
  if (columns.length === 0) return null;
  return (
    <div class="scroll" tabIndex={0} role="region" aria-labelledby={id}>
      <table class="matrix">
        <caption id={id}>{`Who passes what at ${station}`}</caption>
        <thead>
          <tr>
            <th scope="col">Check</th>
            {columns.map(({ who, posture }) => (
              <th scope="col">
                {who}
                {posture && <span class="of">{postureWord(posture)}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {served.length > 0 && <JointRow served={served} columns={columns} />}
          {rowsOf(findings).map((row) => (
            <CheckRow row={row} columns={columns} findings={findings.filter((finding) => isIn(row, finding))} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The event that everything holds at once for a person. */
function JointRow({ served, columns }: { served: readonly Served[]; columns: readonly Column[] }) {
  return (
    <tr class="joint">
      <th scope="row">
        Everything at once<span class="of">people within the preferred band</span>
      </th>
      {columns.map((column) => {
        const person = served.find(({ who, posture }) => who === column.who && posture === column.posture);
        return (
          <td>
            {person && <VerdictMark verdict={person.verdict} />}
            {person && (
              <span class="of">
                {percent(person.share)}
                {person.cover !== undefined && ` of ${percent(person.cover)} asked`}
              </span>
            )}
          </td>
        );
      })}
    </tr>
  );
}

function CheckRow({ row, columns, findings }: { row: Row; columns: readonly Column[]; findings: readonly Finding[] }) {
  const general = findings.filter(({ operator }) => operator === undefined);
  return (
    <tr>
      <th scope="row">
        {titleOf(row.check)}
        {row.subject && <span class="of">{row.subject}</span>}
      </th>
      {general.length > 0 ? (
        <Cell findings={findings} span={columns.length} />
      ) : (
        columns.map((column) => <Cell findings={findings.filter((finding) => concerns(finding, column))} />)
      )}
    </tr>
  );
}

function Cell({ findings, span }: { findings: readonly Finding[]; span?: number }) {
  if (findings.length === 0) return <td aria-label="not checked">–</td>;
  return (
    <td colSpan={span}>
      <VerdictMark verdict={worst(findings.map(({ verdict }) => verdict))} />
      {findings.some(({ accepted }) => accepted !== undefined) && <span class="of">accepted</span>}
    </td>
  );
}
