const { EventEmitter, FileSystemError, FileType, Uri, workspace } = require('vscode');

const folder = '/booths';

/** Shows the files of files.json as a folder that is on no disk; what is written there lasts as long as the window. */
exports.activate = async ({ extensionUri, subscriptions }) => {
  const given = await workspace.fs.readFile(Uri.joinPath(extensionUri, 'files.json'));
  const { scheme, files } = JSON.parse(new TextDecoder().decode(given));
  const texts = new Map(
    Object.entries(files).map(([name, text]) => [`${folder}/${name}`, new TextEncoder().encode(text)]),
  );
  const changed = new EventEmitter();
  const times = { ctime: 0, mtime: 0 };

  const find = (uri) => {
    const text = texts.get(uri.path);
    if (!text) throw FileSystemError.FileNotFound(uri);
    return text;
  };
  const provider = {
    onDidChangeFile: changed.event,
    watch: () => ({ dispose: () => undefined }),
    stat: (uri) => {
      if (uri.path === folder || uri.path === '/') return { type: FileType.Directory, ...times, size: 0 };
      return { type: FileType.File, ...times, size: find(uri).byteLength };
    },
    readDirectory: (uri) => {
      if (uri.path !== folder) throw FileSystemError.FileNotFound(uri);
      return [...texts.keys()].map((path) => [path.slice(folder.length + 1), FileType.File]);
    },
    readFile: find,
    writeFile: (uri, content) => {
      const type = texts.has(uri.path) ? 1 : 2;
      texts.set(uri.path, content);
      times.mtime += 1;
      changed.fire([{ type, uri }]);
    },
    rename: (from, to) => {
      texts.set(to.path, find(from));
      texts.delete(from.path);
      changed.fire([
        { type: 3, uri: from },
        { type: 2, uri: to },
      ]);
    },
    delete: (uri) => {
      texts.delete(uri.path);
      changed.fire([{ type: 3, uri }]);
    },
    createDirectory: (uri) => {
      throw FileSystemError.NoPermissions(uri);
    },
  };
  subscriptions.push(workspace.registerFileSystemProvider(scheme, provider, { isCaseSensitive: true }));
};
