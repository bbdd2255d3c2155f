import { formatAngle, type Finding } from '@boothwright/fit';
import { titleOf } from '../titles.js';
import { percent, personOf, subjectOf, type Units } from '../words.js';

/** How one check was passed. */
export interface PassesTold {
  readonly title: string;
  /** 'all 4', '2 of 4'. */
  readonly passing: string;
  /** The passing result nearest to its bound: '1 3/8 in to spare: seat Tall, Tobias, sitting'. */
  readonly tightest: string;
}

/** Each check that something passes, in the order of the findings; what the file accepts is not counted. */
export function tellPasses(findings: readonly Finding[], units: Units): readonly PassesTold[] {
  const open = findings.filter(({ accepted }) => accepted === undefined);
  const checks = new Set(open.filter(({ verdict }) => verdict === 'pass').map(({ check }) => check));
  return [...checks].map((check) => {
    const own = open.filter((finding) => finding.check === check);
    const passing = own.filter(({ verdict }) => verdict === 'pass');
    return {
      title: titleOf(check),
      passing: passing.length === own.length ? `all ${own.length}` : `${passing.length} of ${own.length}`,
      tightest: tellTightest(passing, units),
    };
  });
}

/** Nearest to its bound: by the share of people whom it suits, then by what is to spare. */
function tellTightest(passing: readonly Finding[], units: Units): string {
  const by = [...passing].sort(
    (a, b) => (a.share ?? 1) - (b.share ?? 1) || (a.margin ?? Infinity) - (b.margin ?? Infinity) || 0,
  );
  const [nearest] = by;
  if (!nearest) return '–';
  const whom = [subjectOf(nearest), personOf(nearest)].filter(Boolean).join(', ');
  const spare = spareOf(nearest, units);
  const share = nearest.share === undefined || nearest.share > ALL ? undefined : `suits ${percent(nearest.share)}`;
  const said = [spare && `${spare} to spare`, share].filter(Boolean).join(', ');
  return said === '' ? whom : `${said}: ${whom}`;
}

/** Above this a share is everybody. */
const ALL = 0.995;

function spareOf({ margin, unit }: Finding, { length }: Units): string | undefined {
  if (margin === undefined || unit === undefined) return undefined;
  switch (unit) {
    case 'mm':
      return length(margin);
    case 'deg':
      return formatAngle(margin);
    case 'arcmin':
      return `${margin.toFixed(1)} arcminutes`;
    case 'kg':
      return `${Math.round(margin)} kg`;
    case 'count':
      return `${Math.round(margin)}`;
    case 'ratio':
      return margin.toFixed(2);
  }
}
