/** The estimate beside the screen: plain data both ways, the label maps handed over without a copy. */
import { expose, transfer } from 'comlink';
import { type EstimateService, estimateService } from './estimate-job.ts';

const { estimateJob, sheetOfLast } = estimateService();

const service: EstimateService = {
  estimateJob(job) {
    const answer = estimateJob(job);
    const buffers = 'regions' in answer ? answer.regions.map(({ label }) => label.buffer) : [];
    return transfer(answer, buffers);
  },
  sheetOfLast,
};

expose(service);
