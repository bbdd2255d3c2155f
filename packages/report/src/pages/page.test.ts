import { checks } from '@boothwright/fit';
import { micromark } from 'micromark';
import { describe, expect, test } from 'vitest';
import { readingMeanings, strengthMeanings } from '../strength.js';
import { pageMarkdown } from './markdown.js';
import { checkPages, pageOfCheck, pageOfCode, pageOfFault } from './page.js';

/** The words of the page as a reader sees them; the marks of what is to be typed are dropped on both sides. */
function words(markdown: string): string {
  return plain(
    micromark(markdown)
      .replace(/<\/?(strong|code)[^>]*>/g, '')
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&'),
  );
}

function plain(text: string): string {
  return text.replaceAll('`', '').replace(/\s+/g, ' ').trim();
}

describe('the page of a check', () => {
  test.each(checks.map((check) => [check.id, check] as const))('%s says all that is known of it', (_, check) => {
    const { id, title, question, computes, limits, sources, strength, caution, example } = check;
    const text = words(pageMarkdown(pageOfCheck(check)));
    const wanted = [
      title,
      id,
      question,
      computes,
      limits,
      strengthMeanings[strength],
      ...sources.map(({ name, says, read }) => `${name} (${readingMeanings[read]}): ${says}`),
      ...(caution === undefined ? [] : [`Caution ${caution}`]),
      `It fires on ${example.fires}`,
      `It does not fire on ${example.passes}`,
    ];
    for (const part of wanted) expect(text).toContain(plain(part));
  });

  test('shows both examples as they are to be typed', () => {
    const { example } = checks[0]!;
    const markdown = pageMarkdown(pageOfCheck(checks[0]!));
    for (const text of [example.fires, example.passes])
      expect(markdown).toContain(`\`\`\`booth\n${text.trimEnd()}\n\`\`\``);
  });

  test('is found by its code, and nothing else is', () => {
    for (const page of checkPages()) expect(pageOfCode(page.code)).toEqual(page);
    expect(pageOfCode('no-such-check')).toBeUndefined();
  });
});

test('the page of a fault tells what it means, what to do, and both texts', () => {
  const help = { title: 'No unit', means: 'It means `60`.', instead: 'Write it.' };
  const whole = pageOfFault('no-unit', { ...help, example: { wrong: 'width 60', right: 'width 60in' } });
  expect(words(pageMarkdown(whole))).toBe(
    'No unit no-unit, fault of the text It means 60. What to do Write it. It is said of width 60 It is not said of width 60in',
  );
  expect(words(pageMarkdown(pageOfFault('no-unit', help)))).not.toContain('It is said of');
});
