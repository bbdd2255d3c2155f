import type { Writable } from 'node:stream';
import { AbstractMessageWriter, type Message, type MessageWriter } from 'vscode-languageserver/node';

/**
 * Writes each message at once and in one piece. The library's own writer waits for its turn, writes how long the message is, waits again and
 * writes the rest: an editor is woken twice for each, up to a tenth of the time from a key to its findings in a small file.
 */
export class WholeMessages extends AbstractMessageWriter implements MessageWriter {
  constructor(private readonly stream: Writable) {
    super();
    stream.on('error', (error) => this.fireError(error));
    stream.on('close', () => this.fireClose());
  }

  /** Rejects if the message cannot be said in JSON or the stream does not take it. */
  async write(message: Message): Promise<void> {
    const content = JSON.stringify(message);
    const text = `Content-Length: ${Buffer.byteLength(content)}\r\n\r\n${content}`;
    await new Promise<void>((resolve, reject) => {
      this.stream.write(text, (error) => (error ? reject(error) : resolve()));
    });
  }

  end(): void {
    this.stream.end();
  }
}
