// Cuts the fonts of the PDF from Noto Sans and writes them to packages/report/src/generated. Run by hand when characters are wanted:
//   npm install --no-save subset-font @expo-google-fonts/noto-sans && node .config/cut-fonts.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';
import { create } from 'fontkit';
import subsetFont from 'subset-font';

const root = fileURLToPath(new URL('..', import.meta.url));
/** Latin, Greek and Cyrillic, with punctuation, fractions, signs of mathematics and the sign for a character that is lacking. */
const blocks = [
  [0x20, 0x7e],
  [0xa0, 0x24f],
  [0x2b0, 0x2ff],
  [0x370, 0x4ff],
  [0x1e00, 0x1eff],
  [0x2010, 0x205f],
  [0x2070, 0x20bf],
  [0x2100, 0x218f],
  [0x2200, 0x22ff],
  [0xfffd, 0xfffd],
];
const characters = blocks
  .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, index) => first + index))
  .map((code) => String.fromCodePoint(code))
  .join('');

let covered = '';
for (const [name, file] of [
  ['noto-sans-regular', '400Regular/NotoSans_400Regular.ttf'],
  ['noto-sans-semibold', '600SemiBold/NotoSans_600SemiBold.ttf'],
]) {
  const whole = readFileSync(`${root}node_modules/@expo-google-fonts/noto-sans/${file}`);
  const options = { targetFormat: 'truetype', keepFeatures: [], noHinting: true, noLayoutClosure: true };
  const cut = await subsetFont(whole, characters, options);
  covered = `export const covered: readonly (readonly [number, number])[] = ${JSON.stringify(runs(create(cut).characterSet))};\n`;
  const text = `// Cut by .config/cut-fonts.mjs from Noto Sans, and packed (zlib); its licence is packages/report/fonts/OFL.txt. Do not edit.\nexport default '${deflateSync(cut, { level: 9 }).toString('base64')}';\n`;
  writeFileSync(`${root}packages/report/src/generated/${name}.ts`, text);
  console.log(`${name}: ${cut.length} bytes`);
}
writeFileSync(
  `${root}packages/report/src/generated/noto-sans-covered.ts`,
  `// The characters of the fonts, from the first to the last of each run. Written by .config/cut-fonts.mjs.\n${covered}`,
);

function runs(codes) {
  const found = [];
  for (const code of [...codes].sort((a, b) => a - b)) {
    if (found.at(-1)?.[1] === code - 1) found.at(-1)[1] = code;
    else found.push([code, code]);
  }
  return found;
}
