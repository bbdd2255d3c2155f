import { describe, expect, it } from 'vitest';
import { commandLine } from './boothwright.js';

const { run } = commandLine();

describe('the command line', () => {
  it.each(['--help', '-h', 'help'])('helps with %s', async (word) => {
    const { status, out, err } = await run(word);
    expect(out).toContain('boothwright check FILE');
    expect(out).toContain('Exit status');
    expect([status, err]).toEqual([0, '']);
  });

  it.each(['check', 'advise', 'report', 'explain'])('helps with %s', async (command) => {
    const { status, out } = await run(command, '--help');
    expect(out).toContain(`boothwright ${command} `);
    expect(status).toBe(0);
  });

  it('tells its version', async () => {
    expect(await run('--version')).toEqual({ status: 0, out: '0.1.0\n', err: '' });
  });

  it.each([
    [[], 'say what to do'],
    [['chekc', 'x.booth'], "there is no command 'chekc'. Did you mean 'check'?"],
    [['constructor'], "there is no command 'constructor'"],
    [['hall.booth'], 'boothwright check hall.booth'],
    [['check'], 'name a booth file'],
    [['check', 'x.booth', '--format', 'xml'], "--format takes text, json or sarif, not 'xml'"],
    [['check', 'x.booth', '--colour'], "Unknown option '--colour'"],
    [['advise'], 'name one booth file'],
    [['advise', 'x.booth', 'Sound', 'Words'], 'name one booth file'],
    [['report', 'x.booth'], 'say where to write the report'],
    [['report', '-o', 'x.html'], 'name one booth file'],
    [['report', 'x.booth', 'y.booth', '-o', 'x.html'], 'name one booth file'],
    [['report', 'x.booth', '-o', 'x.html', '--names', 'some'], "--names takes full or letters, not 'some'"],
    [
      ['report', 'x.booth', '-o', 'x.html', '--format', 'docx'],
      "--format takes html, pdf, markdown or json, not 'docx'",
    ],
    [['explain'], 'name a check'],
  ])('ends with 2 for %j, in a sentence', async (args, complaint) => {
    const { status, out, err } = await run(...args);
    expect(err).toContain(complaint);
    expect(err).not.toMatch(/\n\s+at /);
    expect([status, out]).toEqual([2, '']);
  });
});
