import { say } from '@boothwright/fit';
import { type Item, itemKind } from './items.js';

/** A whole small booth for a file that is still empty, in either system of units. It reads without a fault, and nothing in it fails. */
export function smallBooths(): Item[] {
  return [
    ofUnits(say`booth, small and whole, in inches`, {
      show: 'in',
      limits: 'us',
      room: 'width ${2:30ft}  depth ${3:44ft}',
      stature: `5'3"`,
      desk: 'width ${5:60in}  depth ${6:30in}  height ${7:38in}',
      stool: 'seat ${8:22in..32in}  seat-depth 16in  seat-width 16in  foot-ring 15in below seat',
      diagonal: '22in',
      screen: 'setback 24in  bottom 8in above desk  tilt 12deg',
      at: '${9:10ft}, ${10:62in}',
      headroom: '7ft',
    }),
    ofUnits(say`booth, small and whole, in centimetres`, {
      show: 'cm',
      limits: 'uk',
      room: 'width ${2:9m}  depth ${3:13m}',
      stature: '160cm',
      desk: 'width ${5:150cm}  depth ${6:75cm}  height ${7:95cm}',
      stool: 'seat ${8:55cm..80cm}  seat-depth 40cm  seat-width 41cm  foot-ring 38cm below seat',
      diagonal: '56cm',
      screen: 'setback 60cm  bottom 21cm above desk  tilt 12deg',
      at: '${9:3m}, ${10:1.6m}',
      headroom: '2.1m',
    }),
  ];
}

type Words = Readonly<
  Record<'show' | 'limits' | 'room' | 'stature' | 'desk' | 'stool' | 'diagonal' | 'screen' | 'at' | 'headroom', string>
>;

function ofUnits(
  label: string,
  { show, limits, room, stature, desk, stool, diagonal, screen, at, headroom }: Words,
): Item {
  return {
    label,
    kind: itemKind.snippet,
    detail: say`a whole file to start from`,
    documentation: say`One desk, one stool, one screen and one way behind, which go together. Put your own figures in their place.`,
    snippet: `booth "\${1:Our hall}" {
  show ${show}
  limits ${limits}
}

room { ${room} }

operator Noor { stature \${4:${stature}} }

desk Table { ${desk} }
stool Tall { ${stool} }
monitor Words { diagonal ${diagonal}  pixels 1920 x 1080  text 22px }

workstation Sound {
  desk Table  stool Tall  operators Noor
  posture sit, stand
  monitor Words { ${screen} }
}

place Table at ${at}
walkway Behind { between booth and back-wall  serves \${11:40}  headroom ${headroom} }
`,
  };
}
