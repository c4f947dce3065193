/**
 * annulet complete: a script by which a shell completes command lines.
 */
import { AnnuletError } from "../../index.js";
import type { Command } from "../command.js";
import { completionScript, SHELLS } from "../completion.js";
import { EXIT } from "../exit.js";
import { print } from "../io.js";
import { usage } from "../usage.js";

export const completeCommand: Command = {
  name: "complete",
  details: [
    "The scripts call annulet by its name, so it has to be where the shell finds it: npm install -g annulet.",
    "Bash and zsh complete from their next start on, once they read the script: as by the lines below.",
  ],
  examples: [
    { line: "annulet complete bash >> ~/.bashrc", does: "Bash" },
    { line: "annulet complete zsh >> ~/.zshrc", does: "zsh, after the line that calls compinit" },
    { line: "annulet complete fish > ~/.config/fish/completions/annulet.fish", does: "fish" },
  ],
  args: [{ name: "<shell>", description: SHELLS.join(", ") }],
  options: [],
  async run({ args: [name] }, io) {
    const shell = SHELLS.find((one) => one === name);
    if (shell === undefined) {
      throw new AnnuletError({
        ...usage("There is no script for this shell."),
        value: name,
        allowed: SHELLS.join(", "),
      });
    }
    print(io, completionScript(shell));
    return EXIT.done;
  },
};
