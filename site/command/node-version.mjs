// Preloaded by every npm script, in plain JavaScript: an old Node could not even read the rest.
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(
    `Loomleaf needs Node 22.18 or newer, this is ${process.versions.node}: run it through npm after "npm ci", which brings one on Linux x64, or install a newer Node.`,
  );
  process.exit(2);
}
