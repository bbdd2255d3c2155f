import { DefaultWorkspaceManager } from 'langium';

/** Leaves the folders alone when it starts: a file is loaded when it is opened, or when an open file imports it. */
export class BoothWorkspaceManager extends DefaultWorkspaceManager {
  override initializeWorkspace(folders: Parameters<DefaultWorkspaceManager['initializeWorkspace']>[0]): Promise<void> {
    this.folders = folders;
    this._ready.resolve();
    return this.ready;
  }
}
