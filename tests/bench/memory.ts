import { URI } from 'langium';
import { createBoothServices } from '../../packages/language/src/module.js';
import { memoryFiles } from '../../packages/language/src/testing/memory.js';
import { boothOf, spotIn } from './documents.js';

/**
 * Ten thousand edits of one file in one session: the heap after each thousand. Ends with status 1 if it grows by more than `ALLOWED` after the
 * first two thousand, in which caches fill. Run with --expose-gc.
 */
const EDITS = 10_000;
const SETTLED = 2000;
const ALLOWED = 1.1;

const collect = globalThis.gc;
if (!collect) throw new Error('Run this with --expose-gc.');

const uri = URI.parse('file:///hall/hall.booth');
let text = boothOf(200);
const files = memoryFiles({ 'hall.booth': text });
const { shared, booth } = createBoothServices({ fileSystemProvider: () => files });
const { DocumentBuilder, LangiumDocuments } = shared.workspace;
await DocumentBuilder.update([uri], []);

const { digits: at, line: first } = spotIn(text);
let row = first;
let settled = NaN;
let last = NaN;
for (let n = 1; n <= EDITS; n++) {
  const lines = text.split('\n');
  const line = lines[row]!;
  const digits = String((n * 7) % 1000).padStart(3, '0');
  lines[row] = line.slice(0, at) + digits + line.slice(at + 3);
  if (n % 50 === 0) {
    lines.splice(2, 0, `// ${n}`);
    row++;
  }
  if (n % 50 === 25 && n > 50) {
    lines.splice(2, 1);
    row--;
  }
  text = lines.join('\n');
  files.files.set(uri.toString(), n % 100 === 99 ? `${text}\ndesk Broken {` : text);
  await DocumentBuilder.update([uri], []);
  if (!booth.Assessments.of(LangiumDocuments.getDocument(uri)!)) throw new Error('The booth is no booth any more.');
  if (n % 1000 !== 0) continue;
  collect();
  last = process.memoryUsage().heapUsed;
  if (n === SETTLED) settled = last;
  console.log(`${String(n).padStart(6)} edits: ${(last / 2 ** 20).toFixed(1)} MB`);
}
const growth = last / settled;
console.log(
  `From ${SETTLED} to ${EDITS} edits the heap became ${growth.toFixed(3)} times as large; ${ALLOWED} is allowed.`,
);
if (growth > ALLOWED) process.exitCode = 1;
