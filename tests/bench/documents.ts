/**
 * Booth files of about so many lines: groups of a desk, a stool, a screen, two people and a workstation, each a little unlike
 * the last. Most of it fits, as in a file that somebody works on.
 */
export function boothOf(lines: number): string {
  const groups = groupsOf(lines);
  const head = [
    'booth "Bench" { show in  limits us }',
    `room { width 440ft  depth ${60 + Math.ceil(groups / ROW) * 9}ft  height 14ft }`,
  ];
  return [...head, ...Array.from({ length: groups }, (_, n) => boothGroup(n)).flat(), ''].join('\n');
}

/** How many groups a booth file of so many lines has; the other languages' files say as many. */
export function groupsOf(lines: number): number {
  return Math.max(1, Math.round((lines - 2) / LINES_A_GROUP));
}

/** The line and column where a number's last digits are typed over, in the middle of the file, and where its unit begins. */
export interface Spot {
  readonly line: number;
  readonly digits: number;
  readonly unit: number;
}

export function spotIn(text: string): Spot {
  const lines = text.split('\n');
  const line = lines.findIndex((each, index) => index >= lines.length / 2 && /\d+\.\d{3}/.test(each));
  const { index, 0: found } = /\d+\.\d{3}/.exec(lines[line]!)!;
  return { line, digits: index + found.length - 3, unit: index + found.length };
}

/** What one group says, in every language. Inches. */
function valuesOf(n: number) {
  return {
    noor: `5'${2 + (n % 4)}"`,
    tobias: `${172 + (n % 12)}cm`,
    elbow: `${9 + (n % 2)} 1/2in`,
    deskHeight: `${26 + (n % 2)}.${String(250 + (n % 500)).padStart(3, '0')}in`,
    at: [10 + (n % ROW) * 7, 8 + Math.floor(n / ROW) * 9] as const,
  };
}

const LINES_A_GROUP = 22;
/** Desks side by side. */
const ROW = 60;

function boothGroup(n: number): string[] {
  const { noor, tobias, elbow, deskHeight, at } = valuesOf(n);
  return [
    `// Place ${n}`,
    `operator Noor${n} {`,
    `  body female  stature ${noor}  popliteal 15 1/2in  sitting-elbow 9in`,
    '}',
    `operator Tobias${n} {`,
    `  body male  stature ${tobias}  popliteal 16 1/2in`,
    `  sitting-elbow ${elbow}`,
    '}',
    `desk Desk${n} {`,
    '  width 60in  depth 30in',
    `  height ${deskHeight}  top 1in`,
    '}',
    `chair Chair${n} { seat 16in..20in  seat-depth 16in  seat-width 20in }`,
    `monitor Cues${n} { diagonal 22in  aspect 16:9  pixels 1920 x 1080  text 24px }`,
    `workstation Sound${n} {`,
    `  desk Desk${n}  chair Chair${n}`,
    `  operators Noor${n}, Tobias${n}`,
    '  posture sit',
    `  monitor Cues${n} { setback 24in  bottom 6in above desk  tilt 15deg }`,
    '}',
    `place Desk${n} at ${at[0]}ft, ${at[1]}ft`,
    '',
  ];
}

/** The same things for the JSON server. */
export function jsonOf(lines: number): string {
  return `${JSON.stringify(dataOf(groupsOf(lines)), null, 2)}\n`;
}

/** The same things for the YAML server. */
export function yamlOf(lines: number): string {
  return `${linesOf(dataOf(groupsOf(lines)), '').join('\n')}\n`;
}

type Data = string | number | readonly Data[] | { readonly [key: string]: Data };

function dataOf(groups: number): { readonly [key: string]: Data } {
  const each = <T>(of: (n: number) => T) => Array.from({ length: groups }, (_, n) => of(n));
  return {
    booth: { name: 'Bench', show: 'in', limits: 'us' },
    room: { width: '440ft', depth: `${60 + Math.ceil(groups / ROW) * 9}ft`, height: '14ft' },
    places: each((n) => {
      const { noor, tobias, elbow, deskHeight, at } = valuesOf(n);
      return {
        operators: [
          { name: `Noor${n}`, body: 'female', stature: noor, popliteal: '15 1/2in', sittingElbow: '9in' },
          { name: `Tobias${n}`, body: 'male', stature: tobias, popliteal: '16 1/2in', sittingElbow: elbow },
        ],
        desk: { name: `Desk${n}`, width: '60in', depth: '30in', height: deskHeight, top: '1in' },
        chair: { name: `Chair${n}`, seat: '16in..20in', seatDepth: '16in', seatWidth: '20in' },
        monitor: { name: `Cues${n}`, diagonal: '22in', aspect: '16:9', pixels: '1920 x 1080', text: '24px' },
        workstation: {
          name: `Sound${n}`,
          desk: `Desk${n}`,
          chair: `Chair${n}`,
          operators: [`Noor${n}`, `Tobias${n}`],
          posture: 'sit',
          monitor: { name: `Cues${n}`, setback: '24in', bottom: '6in above desk', tilt: '15deg' },
        },
        at: [`${at[0]}ft`, `${at[1]}ft`],
      };
    }),
  };
}

function linesOf(data: Data, indent: string): string[] {
  if (Array.isArray(data))
    return (data as readonly Data[]).flatMap((each) => {
      if (typeof each !== 'object') return [`${indent}- ${JSON.stringify(each)}`];
      const [first = '', ...rest] = linesOf(each, `${indent}  `);
      return [`${indent}- ${first.trimStart()}`, ...rest];
    });
  return Object.entries(data).flatMap(([key, value]) =>
    typeof value === 'object'
      ? [`${indent}${key}:`, ...linesOf(value as Data, `${indent}  `)]
      : [`${indent}${key}: ${JSON.stringify(value)}`],
  );
}

const length = { type: 'string', pattern: '^[0-9]+([.][0-9]+)?( [0-9]+/[0-9]+)?(in|ft|cm|mm|m)( above desk)?$' };
const text = { type: 'string', minLength: 1 };
const object = (properties: Record<string, unknown>) => ({
  type: 'object',
  properties,
  required: Object.keys(properties),
  additionalProperties: false,
});

/** What a schema can say of it: which properties there are, that they are there, and what a value looks like. */
export const schema = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  ...object({
    booth: object({ name: text, show: { enum: ['in', 'cm', 'mm', 'm'] }, limits: { enum: ['us', 'uk', 'generic'] } }),
    room: object({ width: length, depth: length, height: length }),
    places: {
      type: 'array',
      items: object({
        operators: {
          type: 'array',
          items: object({
            name: text,
            body: { enum: ['female', 'male'] },
            stature: text,
            popliteal: length,
            sittingElbow: length,
          }),
        },
        desk: object({ name: text, width: length, depth: length, height: length, top: length }),
        chair: object({ name: text, seat: text, seatDepth: length, seatWidth: length }),
        monitor: object({ name: text, diagonal: length, aspect: text, pixels: text, text }),
        workstation: object({
          name: text,
          desk: text,
          chair: text,
          operators: { type: 'array', items: text },
          posture: { enum: ['sit', 'stand'] },
          monitor: object({ name: text, setback: length, bottom: length, tilt: text }),
        }),
        at: { type: 'array', items: length },
      }),
    },
  }),
};
