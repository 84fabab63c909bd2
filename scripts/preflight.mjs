// Says in one sentence what is missing, before anything else can fail in a less clear way.
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  process.stderr.write(
    `Flocwright needs Node 22.18 or newer and found ${process.versions.node}: install a current Node from your system's packages, then run the command again.\n`,
  );
  process.exit(1);
}
