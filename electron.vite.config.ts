import vue from "@vitejs/plugin-vue";
import { defineConfig } from "electron-vite";
import { contract } from "./src/contract.ts";

export default defineConfig({
  main: {
    build: {
      target: "node24",
      outDir: "out/main",
      // Everything is bundled, so that the packed app needs no node_modules.
      externalizeDeps: false,
      lib: { entry: { electron: "main/hosts/electron/main.ts" }, formats: ["es"] },
    },
  },
  preload: {
    define: { __CALL_NAMES__: JSON.stringify(Object.keys(contract)) },
    build: {
      target: "node24",
      outDir: "out/preload",
      lib: { entry: { preload: "main/hosts/electron/preload.ts" }, formats: ["cjs"] },
      rollupOptions: { output: { entryFileNames: "[name].cjs" } },
    },
  },
  renderer: {
    root: "renderer",
    base: "./",
    plugins: [vue()],
    worker: { format: "es" },
    build: {
      target: "chrome130",
      outDir: "out/renderer",
      emptyOutDir: true,
      minify: true,
      // An inlined file would be a data: address, which the content policy does not allow for scripts.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      rollupOptions: { input: "renderer/index.html" },
    },
  },
});
