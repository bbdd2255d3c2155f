import type { Check } from '@boothwright/fit';
import { readingMeanings, strengthMeanings } from '@boothwright/report';
import type { ReportingDescriptor } from 'sarif';
import { formatCheck } from './explanation.js';

const HELP_WIDTH = 100;

/** A check of the catalogue as a rule: what it asks, all that is known of it, and its place among the groups. */
export function ruleOf(check: Check): ReportingDescriptor {
  return {
    id: check.id,
    name: check.id.replace(/(^|-)([a-z])/g, (_, __, letter: string) => letter.toUpperCase()),
    shortDescription: { text: check.title },
    fullDescription: { text: `${check.question} ${check.computes}` },
    help: { text: formatCheck(check, { width: HELP_WIDTH, colours: false }), markdown: markdownOf(check) },
    defaultConfiguration: { level: 'error' },
    properties: { tags: [check.group], strength: check.strength },
  };
}

/** A fault of the text, by its code. */
export function ruleOfCode(code: string): ReportingDescriptor {
  return {
    id: code,
    shortDescription: { text: `Booth file: ${code.replaceAll('-', ' ')}` },
    help: {
      text: 'The text of the booth file is at fault here; what it says here is left out. The message says what to write.',
    },
    properties: { tags: ['text'] },
  };
}

function markdownOf({ question, computes, limits, sources, strength, caution, example }: Check): string {
  const parts = [
    question,
    `**How it is computed.** ${computes}`,
    `**Limits.** ${limits}`,
    ['**Sources**', '', ...sources.map(({ name, says, read }) => `- ${name} (${readingMeanings[read]}): ${says}`)].join(
      '\n',
    ),
    `**Strength.** ${strengthMeanings[strength]}`,
    ...(caution === undefined ? [] : [`**Caution.** ${caution}`]),
    `**It fires on**\n\n\`\`\`booth\n${example.fires.trimEnd()}\n\`\`\``,
    `**It does not fire on**\n\n\`\`\`booth\n${example.passes.trimEnd()}\n\`\`\``,
  ];
  return parts.join('\n\n');
}
