import "@fontsource-variable/source-sans-3/wght.css";
import "./styles/tokens.css";
import "./styles/base.css";
import { speakFirst } from "./language.ts";
import { holdConnection, refuseStrayFiles } from "./windows.ts";

// The screens are loaded once the language is spoken, so that what they name at load is named in it.
async function begin(): Promise<void> {
  await speakFirst();
  const { start } = await import("./start.ts");
  await start();
}

holdConnection();
refuseStrayFiles();
void begin();
