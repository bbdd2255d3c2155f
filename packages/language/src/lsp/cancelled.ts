import { isOperationCancelled } from 'langium';
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';

/** Says of a question that was taken back what the protocol has for that; any other error stays as it is. */
export function rethrow(error: unknown): never {
  if (isOperationCancelled(error))
    throw new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was cancelled.');
  throw error;
}
