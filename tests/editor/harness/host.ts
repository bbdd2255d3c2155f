import type { Page } from 'playwright-core';

/** A running editor with the packaged extension in it. */
export interface Host {
  readonly page: Page;
  /** Where the editor writes its logs. */
  readonly logs: string;
  stop(): Promise<void>;
}

/** Where the editor finds what it opens and what it keeps; all that are paths exist. */
export interface HostFolders {
  /** The folder that it opens: a path, or the URI of one that is on no disk. */
  readonly workspace: string;
  readonly userData: string;
  readonly extensions: string;
  /**
   * The display language, told to the page as a language pack would tell it: the editor's own words stay English, but extensions
   * are given theirs. Only the server build is told; absent: English.
   */
  readonly language?: string;
  /** Whether the folder is not trusted. */
  readonly isRestricted?: boolean;
}

/** What a test file needs to start an editor; plain data, since it crosses from the set-up to the tests. */
export type HostPlan =
  | {
      readonly kind: 'server';
      readonly node: string;
      readonly entry: string;
      readonly chromium: string;
      readonly extensions: string;
    }
  | { readonly kind: 'desktop'; readonly executable: string; readonly extensions: string };

/** The window's size, so that screenshots compare. */
export const viewport = { width: 1280, height: 800 };

/** The setting that has the editor ask which folders to trust. */
export const trustSetting = 'security.workspace.trust.enabled';

/** What a test changes of the editor's defaults: nothing that greets, asks, updates or reports home. */
export const userSettings = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.enableExperiments': false,
  'chat.disableAIFeatures': true,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  [trustSetting]: false,
  'git.enabled': false,
  'editor.minimap.enabled': false,
  'files.simpleDialog.enable': true,
  'window.dialogStyle': 'custom',
};
