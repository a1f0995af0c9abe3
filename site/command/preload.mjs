// Preloaded by every npm script and its threads, in plain JavaScript: an old Node could not even read the rest.
import module from 'node:module';
import { fileURLToPath } from 'node:url';

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(
    `Loomleaf needs Node 22.18 or newer, this is ${process.versions.node}: run it through npm after "npm ci", which brings one on Linux x64, or install a newer Node.`,
  );
  process.exit(2);
}

// Compiled code of the last run, which Node finds again by what the files hold: half of a small command's time.
module.enableCompileCache(fileURLToPath(new URL('../../.loomleaf/compiled', import.meta.url)));

// The bundler keeps what it has freed, more than a gigabyte for thousands of guides, unless it is told before it is loaded.
process.env.MIMALLOC_PURGE_DELAY ??= '0';
