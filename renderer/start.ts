import { createPinia } from "pinia";
import { createApp } from "vue";
import App from "./App.vue";
import { call } from "./client.ts";
import { router } from "./router.ts";
import { useDrafts } from "./stores/drafts.ts";
import { useStudy } from "./stores/study.ts";

// A study that is open in the host already (a reload, an address with a room in it) is taken up before the first room is
// chosen, so that the room asked for is the room shown.
export async function start(): Promise<void> {
  const app = createApp(App).use(createPinia());
  const current = await call("study.current", {});
  if (current.ok && (await useStudy().accept(current.value))) {
    // What stands above the room comes with it, so that nothing moves once it is shown.
    await Promise.all([useDrafts().load(), import("./components/StudyFrame.vue")]);
  }
  app.use(router).mount("#app");
}
