/** The estimate beside the screen: plain data both ways, the label maps handed over without a copy. */
import { expose, releaseProxy, transfer } from 'comlink';
import { type EstimateNews, type EstimateService, estimateService } from './estimate-job.ts';

const { estimateJob, sheetOfLast } = estimateService();

const service: EstimateService = {
  estimateJob(job, report) {
    const answer = estimateJob(job, report);
    letGo(report);
    const buffers = 'regions' in answer ? answer.regions.map(({ label }) => label.buffer) : [];
    return transfer(answer, buffers);
  },
  sheetOfLast,
};

expose(service);

/** What was handed over to be called from here is let go, or its channel would stay open for good. */
function letGo(report: ((news: EstimateNews) => void) | undefined): void {
  if (report === undefined || !(releaseProxy in report)) return;
  const release: unknown = report[releaseProxy];
  if (typeof release === 'function') release();
}
