// Runs everything that `npm test` promises and ends with one line that counts it.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = new URL('..', import.meta.url);
const report = new URL('tests/output/vitest.json', root);
const chromiumPaths = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
let passed = 0;
let failed = 0;

function run(command, args) {
  const result = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: process.env });
  return result.status === 0;
}

function step(name, command, args) {
  console.log(`\n== ${name}`);
  if (run(command, args)) passed += 1;
  else {
    failed += 1;
    console.log(`FAILED: ${name}`);
  }
}

const node = process.execPath;
// As a path, not a URL: the folder of the project may have a space in its name.
const bin = (name) => fileURLToPath(new URL(`node_modules/.bin/${name}`, root));

function browserFound() {
  return chromiumPaths.some((path) => existsSync(path)) || process.env.TILLERMARK_CHROMIUM;
}

/** System packages are installed only by CI as root; anybody else is told the command. */
function ensureBrowser() {
  if (browserFound()) return;
  const commands = ['apt-get update', 'apt-get install -y --no-install-recommends chromium'];
  if (process.env.CI && process.getuid?.() === 0) {
    for (const line of commands) run('bash', ['-c', line]);
  } else {
    console.log(`No browser for the end-to-end tests. Install one: ${commands.join(' && ')}`);
    console.log('or "npx playwright install chromium".');
  }
}

step('types', bin('tsc'), []);
step('lint', bin('biome'), ['check', '--error-on-warnings']);
step('import rule', node, ['tests/import-rule/check.ts']);
step('build', 'npm', ['run', '--silent', 'build']);
ensureBrowser();

mkdirSync(new URL('tests/output', root), { recursive: true });
rmSync(report, { force: true });
console.log('\n== unit, published, campaigns, end-to-end');
const green = run(bin('vitest'), [
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${fileURLToPath(report)}`,
]);
if (existsSync(report)) {
  const result = JSON.parse(readFileSync(report, 'utf8'));
  passed += result.numPassedTests;
  failed += result.numFailedTests;
  // A file that fails to load counts no test; it must not pass for silence.
  if (!green && result.numFailedTests === 0) failed += 1;
} else {
  failed += 1;
}
if (!process.env.CI) console.log('\nThe desktop window has its own run: npm run test:desktop');
console.log(`\ntests: ${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
