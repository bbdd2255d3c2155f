import { parseHelper } from 'langium/test';
import { expect, test } from 'vitest';
import { createBoothServices } from './module.js';
import { memoryFiles, uriOf } from './testing/memory.js';

const hall = `import "furniture.booth"
booth "Hall" { show in }
operator Noor { stature 5'3" }
desk Left { width 60in  depth 27in  height 40in }
workstation Sound { desk Left  stool Tall  operators Noor }
workstation Words { desk Long  operators Noor }
`;
const files = {
  'furniture.booth': 'stool Tall { seat 26in..32in }\ndesk Long { width 72in  depth 30in  height 30in }\n',
  'other.booth': 'stool Tall { seat 20in }\ndesk Long { width 72in  depth 30in  height 36in }\n',
};
const texts = [
  hall,
  hall.replace('40in', '28in'),
  hall.replace('40in', '28in').replace(`5'3"`, '6ft'),
  hall.replace('height 40in }', ''),
  hall.replace('furniture', 'other'),
  hall.replace(/workstation Words.*\n/, ''),
  hall.replace('40in', '28in'),
];

async function openHall() {
  const { booth, shared } = createBoothServices({ fileSystemProvider: () => memoryFiles(files) });
  const uri = uriOf('hall.booth').toString();
  const other = await parseHelper(booth)('import "other.booth"\n', { documentUri: uriOf('rota.booth').toString() });
  await shared.workspace.DocumentBuilder.build([other]);
  return { booth, document: await parseHelper(booth)(hall, { documentUri: uri }) };
}

test('what is tried after other texts is as if it were tried first', async () => {
  const { booth, document } = await openHall();
  const together = await Promise.all(texts.map((text) => booth.Trial.assess(document, text)));
  for (const [index, text] of texts.entries()) {
    const fresh = await openHall();
    expect(together[index], text).toEqual(await fresh.booth.Trial.assess(fresh.document, text));
  }
  expect(together[0]).not.toEqual(together[1]);
  expect(together[1]).toEqual(together[6]);
});

test('of files that import each other, each is tried for itself', async () => {
  const { booth, shared } = createBoothServices({ fileSystemProvider: () => memoryFiles({}) });
  const [a, b] = await Promise.all(
    ['a', 'b'].map((name) =>
      parseHelper(booth)(`import "${name === 'a' ? 'b' : 'a'}.booth"\nbooth "${name}" { }\n`, {
        documentUri: uriOf(`${name}.booth`).toString(),
      }),
    ),
  );
  await shared.workspace.DocumentBuilder.build([a!, b!]);
  const titleOf = async (document: typeof a) =>
    (await booth.Trial.assess(document!, document!.textDocument.getText()))?.booth.name;
  expect([await titleOf(a), await titleOf(b), await titleOf(a)]).toEqual(['a', 'b', 'a']);
});

test('a file that the text does not import yet is not there', async () => {
  const { booth, document } = await openHall();
  const tried = await booth.Trial.assess(document, hall.replace('furniture', 'other'));
  expect(tried?.booth.seats).toEqual([]);
});

test('a text that is tried leaves the file as it is', async () => {
  const { booth, document } = await openHall();
  const before = booth.Assessments.of(document)!.assessment;
  await booth.Trial.assess(document, texts[1]!);
  expect(booth.Assessments.of(document)!.assessment).toBe(before);
  expect(document.textDocument.getText()).toBe(hall);
});
