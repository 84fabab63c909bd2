import vue from "@vitejs/plugin-vue";
import { defineConfig } from "electron-vite";

export default defineConfig({
  main: {
    build: {
      target: "node24",
      outDir: "out/main",
      lib: { entry: { electron: "main/hosts/electron/main.ts" }, formats: ["es"] },
    },
  },
  preload: {
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
