import type { LangiumSharedServices } from 'langium/lsp';
import type { ClientOptions } from '../protocol.js';

/** What the editor at the other end can do beyond the standard protocol; nothing until it has said so. */
export class EditorAbilities {
  private options: ClientOptions = {};

  constructor({ shared }: { readonly shared: LangiumSharedServices }) {
    shared.lsp.LanguageServer.onInitialize(({ initializationOptions }) => {
      this.options = (initializationOptions as ClientOptions | null | undefined) ?? {};
    });
  }

  get showsAdvice(): boolean {
    return this.options.showsAdvice === true;
  }

  get showsPreview(): boolean {
    return this.options.showsPreview === true;
  }

  get opensPages(): boolean {
    return this.options.opensPages === true;
  }
}
