import { PassThrough, Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { type Message, StreamMessageReader } from 'vscode-languageserver/node';
import { WholeMessages } from './whole-messages.js';

const told = ['a', 'Grün, ⟂ and 🪑', 'x'.repeat(200_000)].map(
  (params, id): Message & { id: number; params: string } => ({ jsonrpc: '2.0', id, params }),
);

describe('messages written whole', () => {
  it('are read by the library as they were sent, in their order', async () => {
    const stream = new PassThrough();
    const writer = new WholeMessages(stream);
    const heard: Message[] = [];
    const all = new Promise<void>((resolve) => {
      new StreamMessageReader(stream).listen((message) => {
        if (heard.push(message) === told.length) resolve();
      });
    });
    await Promise.all(told.map((message) => writer.write(message)));
    await all;
    expect(heard).toEqual(told);
  });

  it('reach the stream at once, each in one piece', () => {
    const pieces: string[] = [];
    const writer = new WholeMessages(
      new Writable({
        write(piece: Buffer, _, done) {
          pieces.push(piece.toString());
          done();
        },
      }),
    );
    for (const message of told) void writer.write(message);
    // The bytes of the text are counted, not its letters (Language Server Protocol 3.17, base protocol).
    const bytes = Buffer.from(JSON.stringify(told[1])).length;
    expect(pieces[1]).toBe(`Content-Length: ${bytes}\r\n\r\n${JSON.stringify(told[1])}`);
    expect(pieces).toHaveLength(told.length);
  });

  it('are refused by a stream that breaks, which whoever listens hears of', async () => {
    const stream = new Writable({
      write(_, __, done) {
        done(new Error('The editor is gone.'));
      },
    });
    const writer = new WholeMessages(stream);
    const errors: string[] = [];
    let isClosed = false;
    writer.onError(([error]) => errors.push(error.message));
    writer.onClose(() => (isClosed = true));
    await expect(writer.write(told[0]!)).rejects.toThrow('The editor is gone.');
    await new Promise((resolve) => setImmediate(resolve));
    expect(errors).toEqual(['The editor is gone.']);
    expect(isClosed).toBe(true);
  });

  it('end with their stream', async () => {
    const stream = new PassThrough();
    new WholeMessages(stream).end();
    expect(await stream.toArray()).toEqual([]);
  });
});
