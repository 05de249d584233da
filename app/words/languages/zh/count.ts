/** 小组的全部试穿员，其中跑过的人数。 */
export const countPanel = (all: number, haveRun: number) =>
  `组内 ${all} 名试穿员（${haveRun} 名跑过）`;
