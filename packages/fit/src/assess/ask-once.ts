import type { Finding, Missing } from '../assessment.js';
import { listOf } from '../format.js';
import { say } from '../words/say.js';

/**
 * Asks for each thing that the file does not say of a subject in one finding: that of the first check which lacks it, which then names
 * the others that wait for it. What is accepted stands for itself alone.
 */
export function askOnce(findings: readonly Finding[]): Finding[] {
  const asking = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (!finding.missing || finding.accepted !== undefined) continue;
    const key = keyOf(finding, finding.missing);
    asking.set(key, [...(asking.get(key) ?? []), finding]);
  }
  return findings.flatMap((finding) => {
    if (!finding.missing || finding.accepted !== undefined) return [finding];
    const [first, ...others] = asking.get(keyOf(finding, finding.missing))!;
    return first === finding ? [others.length > 0 ? speakingFor(finding, others) : finding] : [];
  });
}

function keyOf({ subject }: Finding, { property, of, origin }: Missing): string {
  return JSON.stringify([subject, property, of, origin]);
}

function speakingFor(first: Finding, others: readonly Finding[]): Finding {
  const { posture, ...finding } = first;
  const blocks = [...new Set(others.map(({ check }) => check))].filter((check) => check !== first.check);
  const onePosture = posture && others.every((other) => other.posture === posture);
  return {
    ...finding,
    ...(onePosture && { posture }),
    ...(blocks.length > 0 && { blocks, message: `${first.message} ${waiting(blocks.map((id) => `\`${id}\``))}` }),
  };
}

function waiting(checks: readonly string[]): string {
  return checks.length === 1 ? say`${checks[0]!} waits for it too.` : say`${listOf(checks)} wait for it too.`;
}
