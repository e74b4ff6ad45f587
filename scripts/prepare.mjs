// Runs on every npm ci: builds the command line, so that `npx risewright` works in a checkout. Without the build tools
// (an install that leaves devDependencies out) it says so and leaves things as they are.
let esbuild = true;
try {
  await import('esbuild');
} catch {
  esbuild = false;
}
if (esbuild) await import('./build.mjs');
else
  console.log(
    'risewright: built nothing, as the build tools are not installed (npm ci --include=dev installs them).',
  );
