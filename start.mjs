/**
 * `npm start`: builds what is missing and opens Tillermark, in its own window where the window
 * program is there, else in the browser. No package and no new syntax: an old Node must be able to
 * read this far to say that it is too old.
 */
import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { constants } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The window program is about 120 MB; a line that cannot bring it in this time, ms, is not waited for. */
const fetchPatience = 60000;

const usage = 'npm start -- [--data=DIR] [--port=N] [--no-open] [--browser]';

/** What is wrong with this version of Node, or null. */
export function nodeRefusal(version) {
  const [major, minor] = version.split('.').map(Number);
  if (major >= 24 || (major === 22 && minor >= 18)) return null;
  return `Tillermark needs Node 24 (or 22.18 and later 22), and this is ${version}: run npm ci, then npm start.`;
}

/** Reads the command line; `problem` says what to change where it cannot be read. */
export function readArguments(argv) {
  const options = { data: null, port: null, open: true, browser: false };
  for (const argument of argv) {
    if (argument === '--no-open') options.open = false;
    else if (argument === '--browser') options.browser = true;
    else if (/^--data=./.test(argument)) options.data = argument.slice('--data='.length);
    else if (/^--port=\d{1,5}$/.test(argument)) options.port = argument.slice('--port='.length);
    else return { problem: `${argument} is not understood. Use: ${usage}` };
  }
  return options;
}

/** The window program's file, or null. Read from its note: importing the package would download it. */
export function windowProgram(root) {
  const folder = join(root, 'node_modules/electron');
  try {
    const file = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8').trim());
    return existsSync(file) ? file : null;
  } catch {
    return null;
  }
}

/**
 * Where Tillermark opens: 'window', 'browser' with the reason, or 'fetch' where the window program
 * is worth one try.
 */
export function chooseWay(facts) {
  if (facts.browserAsked) return { way: 'browser', reason: 'asked' };
  if (facts.isRoot) return { way: 'browser', reason: 'root' };
  if (!facts.hasScreen) return { way: 'browser', reason: 'no-screen' };
  if (facts.hasWindowProgram) return { way: 'window' };
  return facts.mayFetch ? { way: 'fetch' } : { way: 'browser', reason: 'missing' };
}

const reasons = {
  asked: 'Tillermark opens in your browser',
  root: 'The window refuses to run as root, so Tillermark opens in your browser',
  'no-screen': 'No screen here for a window, so Tillermark opens in your browser',
  missing: 'No window program here, so Tillermark opens in your browser',
};

/** The line before the host prints the address. */
export function reasonLine(reason, open) {
  return `${open ? reasons[reason] : reasons[reason].replace('opens in', 'waits for')}:`;
}

export function hostArguments(options) {
  const given = [options.open ? '--open' : '--no-open'];
  if (options.data !== null) given.push(`--data=${options.data}`);
  if (options.port !== null) given.push(`--port=${options.port}`);
  return given;
}

export function windowArguments(root, options) {
  return options.data === null ? [root] : [root, `--data=${options.data}`];
}

/** The latest change below a file or folder, ms; 0 where there is nothing. */
function newest(path) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newest(join(path, name))), 0);
}

/** Whether a built file is missing or older than something it was built from. */
export function isStale(root, output, sources) {
  const built = statSync(join(root, output), { throwIfNoEntry: false });
  return (
    built === undefined || sources.some((source) => newest(join(root, source)) > built.mtimeMs)
  );
}

const builds = {
  page: {
    output: 'dist/renderer/index.html',
    sources: ['renderer', 'shared', 'package-lock.json'],
    command: ['node_modules/vite/bin/vite.js', 'build', '--config', 'renderer/vite.config.ts'],
  },
  window: {
    output: 'dist/electron/main.js',
    sources: ['electron', 'core', 'shared', 'migrations', 'demo-data', 'package-lock.json'],
    command: ['electron/build.ts'],
  },
};

/** Runs a script with this Node, collecting what it says. Never rejects. */
export function runQuietly(root, command, patience) {
  return new Promise((done) => {
    const child = spawn(process.execPath, command, {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
      timeout: patience,
      killSignal: 'SIGKILL',
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (said += text));
    child.on('error', (error) => done({ ok: false, said: String(error) }));
    child.on('close', (code) => done({ ok: code === 0, said }));
  });
}

/** Builds one part where it is out of date. Returns false after saying what went wrong. */
async function build(root, part) {
  const { output, sources, command } = builds[part];
  if (!isStale(root, output, sources)) return true;
  console.log(`Building the ${part}, a moment ...`);
  const { ok, said } = await runQuietly(root, command);
  if (!ok)
    console.error(`${said}\nThe ${part} could not be built: run npm ci, then npm start again.`);
  return ok;
}

const markerOf = (root) => join(root, 'node_modules/.cache/tillermark/window-fetch-failed');

function electronVersion(root) {
  try {
    return JSON.parse(readFileSync(join(root, 'node_modules/electron/package.json'), 'utf8'))
      .version;
  } catch {
    return null;
  }
}

/** Whether a fetch is worth a try: not forbidden, and not failed before for this very version. */
export function mayFetch(root, env) {
  const version = electronVersion(root);
  const forbidden = env.ELECTRON_SKIP_BINARY_DOWNLOAD;
  if (version === null || (forbidden && forbidden !== '0')) return false;
  const marker = markerOf(root);
  return !existsSync(marker) || readFileSync(marker, 'utf8') !== version;
}

/** Tries the fetch once, and remembers where it failed. Returns whether the program is there now. */
export async function fetchWindowProgram(root, patience) {
  console.log('Fetching the window program, once, for a minute at most ...');
  await runQuietly(root, ['node_modules/electron/install.js'], patience);
  if (windowProgram(root) !== null) return true;
  const marker = markerOf(root);
  mkdirSync(dirname(marker), { recursive: true });
  writeFileSync(marker, electronVersion(root));
  return false;
}

/** Runs the program in the foreground and gives back its exit code. */
function runToEnd(file, given, env) {
  return new Promise((done) => {
    const child = spawn(file, given, { stdio: 'inherit', env });
    for (const signal of ['SIGINT', 'SIGTERM']) {
      process.on(signal, () => {
        // A terminal sends Ctrl-C to the child as well: twice would interrupt its closing.
        if (signal !== 'SIGINT' || !process.stdin.isTTY) child.kill(signal);
      });
    }
    child.on('error', (error) => {
      console.error(error.message);
      done(1);
    });
    child.on('exit', (code, signal) =>
      done(code === null ? 128 + constants.signals[signal] : code),
    );
  });
}

async function openWindow(root, options) {
  if (!(await build(root, 'window'))) return 1;
  const { ELECTRON_RUN_AS_NODE: _, ...env } = process.env;
  const code = await runToEnd(windowProgram(root), windowArguments(root, options), env);
  if (code !== 0) console.error('If no window appeared, use: npm start -- --browser');
  return code;
}

function openBrowser(root, options, reason) {
  console.log(reasonLine(reason, options.open));
  const host = join(root, 'core/host/node-main.ts');
  return runToEnd(process.execPath, [host, ...hostArguments(options)], process.env);
}

function factsOf(root, options) {
  const { platform, env } = process;
  return {
    browserAsked: options.browser,
    isRoot: platform === 'linux' && process.getuid() === 0,
    hasScreen: platform !== 'linux' || Boolean(env.DISPLAY || env.WAYLAND_DISPLAY),
    hasWindowProgram: windowProgram(root) !== null,
    mayFetch: mayFetch(root, env),
  };
}

async function main(root) {
  const refusal = nodeRefusal(process.versions.node);
  const options = readArguments(process.argv.slice(2));
  if (refusal !== null || options.problem !== undefined) {
    console.error(refusal === null ? options.problem : refusal);
    return 1;
  }
  if (!(await build(root, 'page'))) return 1;
  const facts = factsOf(root, options);
  let choice = chooseWay(facts);
  if (choice.way === 'fetch') {
    const hasWindowProgram = await fetchWindowProgram(root, fetchPatience);
    choice = chooseWay({ ...facts, hasWindowProgram, mayFetch: false });
  }
  return choice.way === 'window'
    ? openWindow(root, options)
    : openBrowser(root, options, choice.reason);
}

const self = fileURLToPath(import.meta.url);
if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === self) {
  main(dirname(self)).then((code) => process.exit(code));
}
