import type { Advice, Assessment } from '@boothwright/fit';
import { larkfieldAdvice } from './larkfield-advice.js';
import { larkfield, larkfieldFindings } from './larkfield.js';

/** The fixture with one text in every place where a file's author can write. */
export function withText(text: string): Assessment {
  const { booth } = larkfield;
  const rename = (named: { name: string }) => ({ ...named, name: text });
  return {
    ...larkfield,
    booth: {
      ...booth,
      name: text,
      operators: booth.operators.map((operator) => ({ ...operator, name: text })),
      workstations: booth.workstations.map((station) => ({
        ...station,
        name: text,
        people: [{ ...station.people[0]!, name: text }],
      })),
      desks: booth.desks.map((desk) => ({ ...desk, ...rename(desk) })),
    },
    findings: [larkfieldFindings[1]!, larkfieldFindings[5]!, larkfieldFindings[9]!].map((finding) => ({
      ...finding,
      subject: { ...finding.subject, name: text },
      operator: text,
      message: text,
      terms: text,
      source: text,
      caution: text,
      assumptions: [text],
      defaults: [text],
      remedies: finding.remedies.slice(0, 1).map((remedy) => ({ ...remedy, title: text })),
      accepted: finding.accepted && text,
      missing: finding.missing && { ...finding.missing, of: text, example: text },
    })),
    workstations: larkfield.workstations.map((station) => ({
      ...station,
      name: text,
      served: [{ ...station.served[0]!, who: text }],
    })),
    walkways: larkfield.walkways.map((walkway) => ({ ...walkway, name: text, terms: text })),
    operators: larkfield.operators.map((operator) => ({ ...operator, name: text })),
  };
}

/** The advice with one text in every place where a file's author can write. */
export function adviceWithText(text: string): Advice {
  const [sound] = larkfieldAdvice.stations;
  const [curve] = sound!.curves;
  return {
    stations: [
      {
        ...sound!,
        workstation: text,
        plans: sound!.plans.map((plan) => ({
          ...plan,
          title: text,
          serves: [text],
          likely: [text],
          leftOut: plan.leftOut.slice(0, 1).map((one) => ({ ...one, who: text })),
        })),
        notes: [text],
        bands: sound!.bands.map((bands) => ({
          ...bands,
          of: text,
          each: bands.each.map((one) => ({ ...one, who: text })),
        })),
        curves: [{ ...curve!, of: text, who: text }],
      },
    ],
    measure: [{ ...larkfieldAdvice.measure[0]!, operator: text }],
    shopping: [{ item: text, wants: [text, text], workstations: [text] }],
  };
}
