import { createCompletionParser, DocumentState, type LangiumCompletionParser } from 'langium';
import type { LangiumServices } from 'langium/lsp';

/** How long after the first findings the parser is built if nobody has needed it, in milliseconds. */
const REST = 100;

/**
 * The parser that completion asks what may follow. Building it takes as long as building the parser of documents, and nobody completes
 * before the first findings are shown: so it is built after them.
 */
export class LazyCompletionParser implements Pick<LangiumCompletionParser, 'parse'> {
  private made: LangiumCompletionParser | undefined;

  constructor(private readonly services: LangiumServices) {
    const { DocumentBuilder } = services.shared.workspace;
    const first = DocumentBuilder.onDocumentPhase(DocumentState.Validated, () => {
      first.dispose();
      setTimeout(() => this.parser, REST);
    });
  }

  parse(input: string): ReturnType<LangiumCompletionParser['parse']> {
    return this.parser.parse(input);
  }

  private get parser(): LangiumCompletionParser {
    return (this.made ??= createCompletionParser(this.services));
  }
}
