import { DefaultWorkspaceManager, type URI } from 'langium';

/**
 * Leaves the folders alone when it starts: a file is loaded when it is opened, or when an open file imports it. Only
 * what concerns every file, as renaming does, loads the rest.
 */
export class BoothWorkspaceManager extends DefaultWorkspaceManager {
  private everything: Promise<void> | undefined;

  override initializeWorkspace(folders: Parameters<DefaultWorkspaceManager['initializeWorkspace']>[0]): Promise<void> {
    this.folders = folders;
    this._ready.resolve();
    return this.ready;
  }

  /** Loads every booth file of the workspace, once. */
  loadAll(): Promise<void> {
    this.everything ??= this.load();
    return this.everything;
  }

  private async load(): Promise<void> {
    const uris: URI[] = [];
    for (const folder of this.folders ?? []) await this.traverseFolder(this.getRootFolder(folder), uris);
    const fresh = uris.filter((uri) => !this.langiumDocuments.hasDocument(uri));
    const documents = await Promise.all(fresh.map((uri) => this.langiumDocuments.getOrCreateDocument(uri)));
    if (documents.length > 0) await this.documentBuilder.build(documents, {});
  }
}
