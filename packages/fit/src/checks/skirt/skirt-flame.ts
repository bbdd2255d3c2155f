import type { Skirt } from '../../booth.js';
import { missing } from '../../stations/station.js';
import { cannotSay } from '../cannot-say.js';
import type { Check, FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

export const skirtFlame: Check = {
  id: 'skirt-flame',
  group: 'skirt',
  title: 'Flame certificate of the cloth',
  question: 'Has somebody confirmed the cloth’s flame certificate?',
  computes:
    'Nothing. It asks, and repeats what the file notes. It never passes by itself: only the official who sees the certificate can say.',
  limits: 'None of its own. Accept it with a reason, once somebody has confirmed the certificate.',
  sources: [
    {
      name: 'IFC 2009 807.1',
      says: 'Curtains, draperies and fabric hung from walls or ceilings of assembly rooms meet NFPA 701 or are noncombustible.',
      read: 'in a secondary source',
    },
    {
      name: 'local show rules and fire-marshal notices',
      says: 'Table coverings and skirts are flame retardant, and a certificate is kept at hand.',
      read: 'in the source',
    },
  ],
  strength: 'medium',
  unpublished: 'codes ask for a certificate of the cloth, which somebody reads; nothing is computed',
  caution:
    'The model code speaks of cloth hung from walls and ceilings; fire officials extend it to skirts as they see fit. A planning aid: your local fire ' +
    'official decides.',
  example: {
    fires: `booth "Example" { }
desk Left { width 60in  depth 27in  height 40in }
skirt Front { on Left  drop 39in }
`,
    passes: `booth "Example" { }
desk Left { width 60in  depth 27in  height 40in }
`,
  },
  find: (scene) => scene.booth.skirts.map(ask),
};

function ask(skirt: Skirt): FindingDraft {
  const subject = { kind: 'skirt', name: skirt.name } as const;
  const noted = skirt.flameCertificate?.value.trim();
  if (!noted) {
    const example = 'flame-certificate "NFPA 701, in the hall file"';
    const lack = missing('flame-certificate', `skirt ${skirt.name}`, example, skirt.origin);
    return cannotSay(
      subject,
      say`Cannot say whether somebody has confirmed the flame certificate of ${skirt.name}.`,
      lack,
      skirt.origin,
    );
  }
  return {
    subject,
    verdict: 'marginal',
    message: say`The file notes of the flame certificate of ${skirt.name}: “${noted}”. Has somebody confirmed it? Keep it on site to show the fire official.`,
    origin: skirt.flameCertificate?.origin ?? skirt.origin,
  };
}
