import type { LangiumSharedServices } from 'langium/lsp';
import type { ClientOptions } from '../protocol.js';

/** What the editor at the other end can do beyond the standard protocol; nothing until it has said so. */
export class EditorAbilities {
  private options: ClientOptions = {};
  /** Asks again for the faults of its texts when it is told to. */
  refreshesFaults = false;

  constructor({ shared }: { readonly shared: LangiumSharedServices }) {
    shared.lsp.LanguageServer.onInitialize(({ initializationOptions, capabilities }) => {
      this.options = (initializationOptions as ClientOptions | null | undefined) ?? {};
      this.refreshesFaults = capabilities.workspace?.diagnostics?.refreshSupport === true;
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
