import type { Advice, Assessment } from '@boothwright/fit';
import { Chart } from '../parts/chart.js';
import { advisedMean, bandsMean, tellMeasure, tellStations, type BandsTold, type PlanTold } from '../telling/advice.js';
import { chartsMean, tellCharts } from '../telling/curves.js';

/** What would fit: plans, bands and curves of each workstation, what to measure and what to ask for. */
export function Advised({ advice, assessment }: { advice: Advice; assessment: Assessment }) {
  return (
    <>
      <Plans advice={advice} assessment={assessment} />
      <MeasureNext advice={advice} />
      <Shopping advice={advice} />
    </>
  );
}

function Plans({ advice, assessment }: { advice: Advice; assessment: Assessment }) {
  const stations = tellStations(advice, assessment);
  if (stations.length === 0) return null;
  const hasBands = stations.some(({ bands }) => bands.length > 0);
  return (
    <section>
      <h2>What would fit</h2>
      <p>{advisedMean}</p>
      {hasBands && <p>{bandsMean}</p>}
      {stations.map(({ workstation, plans, noPlan, notes, bands }, index) => (
        <section>
          <h3>{`Plans for ${workstation}`}</h3>
          {noPlan && <p>{noPlan}</p>}
          {plans.length > 0 && (
            <ol class="plans">
              {plans.map((plan) => (
                <PlanItem plan={plan} />
              ))}
            </ol>
          )}
          {notes.map((note) => (
            <p>{note}</p>
          ))}
          <div class="bands">
            {bands.map((each) => (
              <BandTable bands={each} />
            ))}
          </div>
          {tellCharts(advice, workstation, assessment.booth).map((chart, which) => (
            <>
              {which === 0 && index === 0 && <p>{chartsMean}</p>}
              <Chart chart={chart} id={`chart-${index + 1}-${which + 1}`} />
            </>
          ))}
        </section>
      ))}
    </section>
  );
}

function PlanItem({ plan: { title, facts } }: { plan: PlanTold }) {
  return (
    <li>
      <strong>{title}</strong>
      {facts.map(({ label, text }) => (
        <span class="of">{`${label}: ${text}.`}</span>
      ))}
    </li>
  );
}

function BandTable({ bands: { part, now, rows } }: { bands: BandsTold }) {
  return (
    <table>
      <caption>{`${part}, now ${now}`}</caption>
      <thead>
        <tr>
          <th scope="col">Who</th>
          <th scope="col">Suits at</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ who, height }) => (
          <tr>
            <th scope="row">{who}</th>
            <td>{height}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function MeasureNext({ advice: { measure } }: { advice: Advice }) {
  if (measure.length === 0) return null;
  return (
    <section>
      <h2>What to measure next</h2>
      <ul class="changes">
        {measure.map(tellMeasure).map(({ title, text }) => (
          <li>
            <strong>{title}</strong>
            <span class="of">{text}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Shopping({ advice: { shopping } }: { advice: Advice }) {
  if (shopping.length === 0) return null;
  return (
    <section>
      <h2>What to ask for in a shop</h2>
      <table class="shopping">
        <caption>Each piece as the best plan has it</caption>
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">Ask for</th>
          </tr>
        </thead>
        <tbody>
          {shopping.map(({ item, wants }) => (
            <tr>
              <th scope="row">{item}</th>
              <td>{wants.join('; ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
