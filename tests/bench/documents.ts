/** Booth files of about so many lines: groups of a desk, a stool, a screen, two people and a workstation, each like the last. */
export function boothOf(lines: number): string {
  const head = ['booth "Bench" { show in  limits us }', 'room { width 400ft  depth 90ft  height 14ft }'];
  const groups = Math.max(1, Math.round((lines - head.length) / LINES_A_GROUP));
  return [...head, ...Array.from({ length: groups }, (_, n) => group(n)).flat(), ''].join('\n');
}

const LINES_A_GROUP = 22;

function group(n: number): string[] {
  return [
    `// Place ${n}`,
    `operator Noor${n} {`,
    `  stature 5'${1 + (n % 10)}"`,
    '}',
    `operator Tobias${n} {`,
    `  stature ${165 + (n % 30)}cm`,
    `  sitting-elbow ${9 + (n % 3)} 1/2in`,
    '}',
    `desk Desk${n} {`,
    '  width 60in  depth 27in',
    `  height ${38 + (n % 5)}in  top 1in`,
    '}',
    `stool Stool${n} { seat 27in..32in  foot-ring 15in below seat }`,
    `monitor Cues${n} { diagonal 22in  aspect 16:9  pixels 1920 x 1080 }`,
    `workstation Sound${n} {`,
    `  desk Desk${n}  stool Stool${n}`,
    `  operators Noor${n}, Tobias${n}`,
    '  posture sit, stand',
    `  monitor Cues${n} { setback 20in  bottom 5in above desk }`,
    '}',
    `place Desk${n} at ${1 + (n % 60) * 6}ft, ${6 + (Math.floor(n / 60) % 9) * 9}ft`,
    '',
  ];
}
