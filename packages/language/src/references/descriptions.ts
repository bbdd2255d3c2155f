import { DefaultReferenceDescriptionProvider, type LangiumDocument, type ReferenceDescription } from 'langium';
import { topLevel } from '../syntax/tree.js';
import { referencesIn } from './linker.js';

/** Describes the references of a linked document, declaration by declaration. */
export class BoothReferenceDescriptions extends DefaultReferenceDescriptionProvider {
  of(document: LangiumDocument): ReferenceDescription[] {
    return topLevel(document)
      .flatMap(referencesIn)
      .filter(({ reference }) => !reference.error)
      .flatMap((reference) => this.createInfoDescriptions(reference));
  }
}
