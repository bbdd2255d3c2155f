import type { Check } from '@boothwright/fit';
import type { IssueCode } from '@boothwright/language';
import { type Page, pageBodyMarkdown, pageOfCheck } from '@boothwright/report';
import type { ReportingDescriptor } from 'sarif';
import { faultPage, formatPage } from './pages.js';

const HELP_WIDTH = 100;

/** A check of the catalogue as a rule: what it asks, all that is known of it, and its place among the groups. */
export function ruleOf(check: Check): ReportingDescriptor {
  return {
    id: check.id,
    name: check.id.replace(/(^|-)([a-z])/g, (_, __, letter: string) => letter.toUpperCase()),
    shortDescription: { text: check.title },
    fullDescription: { text: `${check.question} ${check.computes}` },
    help: helpOf(pageOfCheck(check)),
    defaultConfiguration: { level: 'error' },
    properties: { tags: [check.group], strength: check.strength },
  };
}

/** A fault of the text, by its code. */
export function ruleOfCode(code: IssueCode): ReportingDescriptor {
  const page = faultPage(code);
  return {
    id: code,
    shortDescription: { text: page.title },
    fullDescription: { text: `${page.lead} What the booth file says here is left out.` },
    help: helpOf(page),
    properties: { tags: ['text'] },
  };
}

function helpOf(page: Page): ReportingDescriptor['help'] {
  return { text: formatPage(page, { width: HELP_WIDTH, colours: false }), markdown: pageBodyMarkdown(page) };
}
