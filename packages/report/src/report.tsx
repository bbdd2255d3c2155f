import type { Assessment } from '@boothwright/fit';
import { render } from 'preact-render-to-string';
import { arrange } from './arrange.js';
import { Drawings } from './drawings/section.js';
import { drawingStyles } from './drawings/styles.js';
import { namesMean } from './names.js';
import { named, type ReportOptions } from './options.js';
import { VerdictShapes } from './parts/verdict.js';
import { AcceptedFindings } from './sections/accepted.js';
import { Advised } from './sections/advised.js';
import { Answer } from './sections/answer.js';
import { Asked } from './sections/asked.js';
import { Assumptions } from './sections/assumptions.js';
import { BodyFigures } from './sections/bodies.js';
import { Cautions } from './sections/cautions.js';
import { Changes } from './sections/changes.js';
import { OtherFindings, Skirts, Walkways } from './sections/pieces.js';
import { Sources } from './sections/sources.js';
import { Workstations } from './sections/stations.js';
import { Unsaid } from './sections/unsaid.js';
import { styles } from './styles.js';
import { unitsOf } from './words.js';

/** The fit report of an assessment: one HTML file that stands alone, without script and without anything to fetch. */
export function renderReport(assessment: Assessment, options: ReportOptions): string {
  const [shown, advice] = named(assessment, options);
  return `<!doctype html>\n${render(<Report assessment={shown} options={{ ...options, advice }} />)}\n`;
}

function Report({ assessment, options }: { assessment: Assessment; options: ReportOptions }) {
  const { booth, findings } = assessment;
  const units = unitsOf(booth.show);
  const arrangement = arrange(assessment);
  const said = namesMean(options.names, booth);
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="generator" content={options.generatedBy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{`${booth.name}: fit report`}</title>
        <style dangerouslySetInnerHTML={{ __html: styles + drawingStyles }} />
      </head>
      <body>
        <VerdictShapes />
        <main>
          <header>
            <p class="kind">Fit report</p>
            <h1>{booth.name}</h1>
            <p class="made">{[options.date, `made with ${options.generatedBy}`].filter(Boolean).join(' · ')}</p>
            {said && <p class="made">{said}</p>}
          </header>
          <Answer assessment={assessment} />
          <Asked booth={booth} units={units} />
          <Drawings assessment={assessment} />
          <Workstations assessment={assessment} arrangement={arrangement} />
          <Changes findings={findings} />
          {options.advice && <Advised advice={options.advice} assessment={assessment} />}
          <Walkways assessment={assessment} findings={arrangement.walkways} units={units} />
          <Skirts findings={arrangement.skirts} />
          <OtherFindings findings={arrangement.others} />
          <AcceptedFindings findings={arrangement.accepted} />
          <Unsaid findings={arrangement.unsaid} />
          <Assumptions booth={booth} findings={findings} units={units} />
          <BodyFigures operators={assessment.operators} units={units} />
          <Sources findings={findings} />
          <Cautions findings={findings} />
        </main>
      </body>
    </html>
  );
}
