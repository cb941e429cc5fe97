// Builds the app and serves it on this machine alone. `npm start`, `npm start -- --port 8080`.
import { createServer } from 'node:net';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

const HOST = '127.0.0.1';
const USUAL_PORT = 4620;

const wanted = wantedPort(process.argv.slice(2));
// Loaded late, so that a wrong option is answered at once.
const { build, preview } = await import('vite');
const configFile = join(import.meta.dirname, 'vite.config.ts');

await build({ configFile, logLevel: 'warn' });
const free = await isFree(wanted);
if (!free) console.log(`Port ${wanted} is taken, so a free one is used.`);
const server = await preview({
  configFile,
  logLevel: 'warn',
  preview: { host: HOST, port: free ? wanted : 0, strictPort: true },
});
console.log(`Fettle is at http://${HOST}:${server.httpServer.address().port}/`);
console.log('Stop it with Ctrl+C.');

for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, stop);
// npm passes a signal on to the shell between it and this process, and no further: when that shell is gone, so is the wish to serve.
const shell = process.ppid;
if (process.env.npm_lifecycle_event !== undefined) setInterval(() => process.ppid !== shell && stop(), 500);

function stop() {
  server.httpServer.close(() => process.exit(0));
  // Browsers keep their connections open; without this the close above would wait for them.
  server.httpServer.closeAllConnections();
}

/** @param {readonly string[]} args */
function wantedPort(args) {
  try {
    const { values } = parseArgs({ args, options: { port: { type: 'string' } } });
    if (values.port === undefined) return USUAL_PORT;
    const port = Number(values.port);
    if (/^\d{1,5}$/.test(values.port) && port >= 1 && port <= 65535) return port;
    return refuse(`--port: "${values.port}" is not a whole number from 1 to 65535.`);
  } catch {
    return refuse(
      `"${args.join(' ')}" is not understood. The one option is --port N: npm start -- --port ${USUAL_PORT}`,
    );
  }
}

/** @param {string} sentence @returns {never} */
function refuse(sentence) {
  console.error(sentence);
  process.exit(2);
}

/** @param {number} port @returns {Promise<boolean>} */
function isFree(port) {
  return new Promise((answer) => {
    const probe = createServer();
    probe.once('error', () => answer(false));
    probe.listen(port, HOST, () => probe.close(() => answer(true)));
  });
}
