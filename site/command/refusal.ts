/** A command cannot do what was asked, and nothing was touched. Its message is the one line that is shown. */
export class Refusal extends Error {}

/** Runs a command: its number is the exit code; a refusal is one line and exit 2. */
export async function run(command: () => Promise<number>): Promise<void> {
  try {
    process.exitCode = await command();
  } catch (error) {
    if (error instanceof Refusal) {
      console.error(error.message);
      process.exitCode = 2;
      return;
    }
    throw error;
  }
}
