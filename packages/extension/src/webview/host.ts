import { type FromPage, type PageState, readPageState } from './messages.js';

/** What an editor gives a page that it shows. */
interface EditorApi {
  postMessage(message: FromPage): void;
  getState(): unknown;
  setState(state: PageState): void;
}

declare function acquireVsCodeApi(): EditorApi;

/** May be asked for once only. */
export const host = acquireVsCodeApi();

let state = readPageState(host.getState());

/** What the page kept; nothing in its first life. */
export function kept(): PageState | undefined {
  return state;
}

/** Changes that follow each other faster than this are handed to the editor once, in milliseconds. */
const PAUSE = 100;
let waiting: ReturnType<typeof setTimeout> | undefined;

export function keep(changes: Partial<PageState>): void {
  const all = { uri: '', zooms: {}, scroll: 0, reached: {}, ...state, ...changes };
  state = all;
  clearTimeout(waiting);
  waiting = setTimeout(() => host.setState(all), PAUSE);
}
