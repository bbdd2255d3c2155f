import { type Extension, Uri, type Webview } from 'vscode';

/** Where a preview's page may load from: the bundles of the extension, nothing else. */
export function resourcesOf(extension: Uri): Uri {
  return Uri.joinPath(extension, 'packages/extension/dist');
}

/** The page, empty: its script fills it. Nothing inline runs or styles, and nothing is fetched but that script. */
export function htmlOf(webview: Webview, { extensionUri, packageJSON }: Extension<unknown>): string {
  const script = webview.asWebviewUri(Uri.joinPath(resourcesOf(extensionUri), 'preview.js')).toString();
  const { version } = packageJSON as { version: string };
  const nonce = crypto.randomUUID();
  return `<!doctype html>
<html lang="en" data-version="${version}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Preview</title>
</head>
<body>
<div id="page"></div>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>
`;
}
