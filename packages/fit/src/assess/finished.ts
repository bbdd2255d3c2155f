import type { Finding, Missing, Related } from '../assessment.js';
import type { Booth } from '../booth.js';
import type { Check, FindingDraft } from '../checks/check.js';
import { exampleIn } from '../example-in.js';
import { withName } from '../lookup.js';
import { defaultsTaken } from './defaults-taken.js';
import { said, say } from '../words/say.js';

/** A draft with what every finding of its check shares, and with the reason for which the file accepts it. */
export function finished(check: Check, draft: FindingDraft, booth: Booth): Finding {
  const acceptance = booth.accepted.find(
    (one) => one.check === check.id && (one.subject === undefined || one.subject === draft.subject.name),
  );
  return {
    check: check.id,
    strength: check.strength,
    ...(check.caution !== undefined && { caution: said(check.caution) }),
    ...(draft.measured !== undefined && check.unit && { unit: check.unit }),
    remedies: [],
    assumptions: [],
    defaults: defaultsTaken(check.restsOn, draft, booth),
    ...draft,
    ...(draft.missing && asking(draft.message, draft.missing, booth)),
    related: [...(draft.related ?? []), ...personOf(draft, booth)],
    source: said(draft.source ?? check.sources[0]!.name),
    ...(draft.assumptions && { assumptions: draft.assumptions.map(said) }),
    ...(acceptance && draft.verdict !== 'pass' && { accepted: acceptance.reason }),
  };
}

/** What the file does not say and what to add, in the file's own unit. */
function asking(what: string, missing: Missing, { show }: Booth): Pick<Finding, 'message' | 'missing'> {
  const example = exampleIn(missing.example, show);
  return {
    message: `${what} ${say`Add \`${missing.property}\` to ${missing.of}, such as \`${example}\`.`}`,
    missing: { ...missing, example },
  };
}

/** Where the person is declared whom a finding is about, unless it leads there already. */
function personOf({ operator, related = [] }: FindingDraft, { operators, crowds }: Booth): readonly Related[] {
  const person = withName(operators, operator) ?? withName(crowds, operator);
  if (!person || related.some(({ origin }) => origin === person.origin)) return [];
  return [{ origin: person.origin, message: say`what is known of ${person.name}` }];
}
