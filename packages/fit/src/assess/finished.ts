import type { Finding, Related } from '../assessment.js';
import type { Booth } from '../booth.js';
import type { Check, FindingDraft } from '../checks/check.js';
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
    related: [...(draft.related ?? []), ...personOf(draft, booth)],
    source: said(draft.source ?? check.sources[0]!.name),
    ...(draft.assumptions && { assumptions: draft.assumptions.map(said) }),
    ...(acceptance && draft.verdict !== 'pass' && { accepted: acceptance.reason }),
  };
}

/** Where the person is declared whom a finding is about, unless it leads there already. */
function personOf({ operator, related = [] }: FindingDraft, { operators, crowds }: Booth): readonly Related[] {
  const person = withName(operators, operator) ?? withName(crowds, operator);
  if (!person || related.some(({ origin }) => origin === person.origin)) return [];
  return [{ origin: person.origin, message: say`what is known of ${person.name}` }];
}
