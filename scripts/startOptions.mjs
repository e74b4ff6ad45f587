/** What `npm start` can be told; Node built-ins only, as it is read before anything is installed. */
const OPTIONS = {
  '--lan': 'so that a phone in the same network reaches it',
  '--built': 'serve the page as it was built last',
};

const usage = Object.entries(OPTIONS)
  .map(([name, what]) => `  npm start -- ${name}   ${what}`)
  .join('\n');

/** `{ lan, built }`, or `{ wrong }` with what to do instead. */
export function readStart(args, env) {
  const wrong = args.find((arg) => OPTIONS[arg] === undefined);
  if (wrong !== undefined) return { wrong: `npm start does not know ${wrong}. It can be told:\n${usage}` };
  // Without the two dashes npm takes an option for its own and passes nothing on.
  const kept = Object.keys(OPTIONS).find((name) => env[`npm_config_${name.slice(2)}`] === 'true');
  if (kept !== undefined)
    return { wrong: `npm kept ${kept} to itself. Write two dashes before it:\n  npm start -- ${kept}` };
  return { lan: args.includes('--lan'), built: args.includes('--built') };
}

/** The port of the address; a browser keeps what was made by address, so another port is another shelf. */
export const USUAL_PORT = 4173;

/** What is said once the page is served, at the addresses others reach it by. */
export function servedWords({ port, network, lan }) {
  const local = `Risewright is at http://127.0.0.1:${port}/`;
  const moved =
    port === USUAL_PORT
      ? ''
      : `\nPort ${USUAL_PORT} is taken, so it is ${port} this time. A browser keeps what was made by address: the shelf of
port ${USUAL_PORT} is not seen at this one. End what holds that port and start again to have it.`;
  if (!lan)
    return `${local}${moved}
Only this machine reaches it, and nothing leaves it. Stop it with Ctrl+C.
For a phone in the same network: npm start -- --lan`;
  const others =
    network.length === 0
      ? 'This machine is in no network now, so no other device can reach it.'
      : `From a phone or tablet in the same network:\n${network.map((url) => `  ${url}`).join('\n')}`;
  return `${local} on this machine.${moved}
${others}

Such an address is plain http, where a browser keeps back:
  wake lock           the screen may go dark while a clock runs
  offline start       the page opens only while this machine serves it
  persistent storage  the browser makes no promise to keep what is stored: make backups
  shared memory       molds are worked out by one thread and take longer
Everything else works there. On any https host all of it does, see docs/hosting.md.

Everyone in this network can open the page. What is typed and scanned stays in the browser it is typed in: each
device has a shop of its own, and a new one if this machine gets another address. Stop it with Ctrl+C.`;
}
