import { Cancellation, EmptyFileSystem, isOperationCancelled, type LangiumDocument } from 'langium';
import { parseHelper } from 'langium/test';
import { type Assessment, type Booth, type Steps } from '@boothwright/fit';
import { beforeEach, expect, test, vi } from 'vitest';
import { createBoothServices } from './module.js';
import { silent } from './testing/analysis.js';

const STEPS = 5;
let taken = 0;
let breaksAt = Infinity;
const token = new Cancellation.CancellationTokenSource();
let cancelledAt = Infinity;
const assess = vi.fn((booth: Booth): Assessment => {
  if (breaksAt < STEPS) throw new Error('a fault of a check');
  return silent.assess(booth);
});

function* assessing(booth: Booth): Steps<Assessment> {
  for (; taken < STEPS; taken++) {
    if (taken === breaksAt) throw new Error('a fault of a check');
    if (taken === cancelledAt) token.cancel();
    yield;
  }
  return silent.assess(booth);
}

const { booth: services } = createBoothServices({
  ...EmptyFileSystem,
  computation: { ...silent, assess, assessing },
});
const parse = parseHelper(services);
const { Assessments } = services;
let document: LangiumDocument;

beforeEach(async () => {
  [taken, breaksAt, cancelledAt] = [0, Infinity, Infinity];
  document = await parse('booth "Hall" { }\n');
  assess.mockClear();
});

test('what was computed in steps is not computed again', async () => {
  await Assessments.prepare(document, Cancellation.CancellationToken.None);
  expect(taken).toBe(STEPS);
  const first = Assessments.of(document);
  expect(first!.booth.name).toBe('Hall');
  await Assessments.prepare(document, Cancellation.CancellationToken.None);
  expect(Assessments.of(document)).toBe(first);
  expect([taken, assess.mock.calls.length]).toEqual([STEPS, 0]);
});

test('a check that breaks between the steps is told of, as ever', async () => {
  breaksAt = 2;
  const diagnostics = await services.validation.DocumentValidator.validateDocument(document);
  expect(diagnostics.map(({ code }) => code)).toEqual(['checks-stopped']);
  expect(diagnostics[0]!.message).toContain('a fault of a check');
});

test('no step is taken after a change, and who needs the answer still gets it', async () => {
  cancelledAt = 2;
  await expect(Assessments.prepare(document, token.token)).rejects.toSatisfy(isOperationCancelled);
  expect(taken).toBe(2);
  expect(Assessments.of(document)!.booth.name).toBe('Hall');
  expect(assess).toHaveBeenCalledTimes(1);
});
