import { createRouter, createWebHashHistory } from "vue-router";
import { useStudy } from "./stores/study.ts";

// A hash history needs no answer from the host for a room's address, so a reload always finds the page.
export const router = createRouter({
  history: createWebHashHistory(),
  routes: [
    { path: "/", name: "start", component: () => import("./rooms/start/StartRoom.vue") },
    { path: "/sample", name: "sample", component: () => import("./rooms/sample/SampleRoom.vue") },
    { path: "/bench", name: "bench", component: () => import("./rooms/bench/BenchRoom.vue") },
    { path: "/curves", name: "curves", component: () => import("./rooms/curves/CurvesRoom.vue") },
    { path: "/dose", name: "dose", component: () => import("./rooms/dose/DoseRoom.vue") },
    { path: "/plant", name: "plant", component: () => import("./rooms/plant/PlantRoom.vue") },
    { path: "/record", name: "record", component: () => import("./rooms/record/RecordRoom.vue") },
    {
      path: "/exchange",
      name: "exchange",
      component: () => import("./rooms/record/exchange/ExchangeRoom.vue"),
    },
    { path: "/sheet", name: "sheet", component: () => import("./report/SheetView.vue") },
    { path: "/report", name: "report", component: () => import("./report/ReportView.vue") },
    { path: "/studies", name: "library", component: () => import("./rooms/library/LibraryRoom.vue") },
    { path: "/:anything(.*)*", redirect: "/" },
  ],
});

// Working the choice out and making the room that shows it would together keep the screen still.
router.beforeResolve(async ({ name }) => {
  if (name !== "curves" && name !== "dose") return;
  const { choiceReady } = await import("./stores/choice-ready.ts");
  await choiceReady();
});

router.beforeEach((to) => {
  const { isOpen } = useStudy();
  if (to.name === "library") return true;
  if (to.name !== "start" && !isOpen) return { name: "start" };
  if (to.name === "start" && isOpen) return { name: "sample" };
  return true;
});
