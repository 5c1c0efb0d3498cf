package app

import (
	"context"

	"ellwand/cmd/ellwand/job"
)

// together lays the garments of one cloth one by one as well, where there are several,
// and searches once more where that came out shorter.
func (s *solver) together(ctx context.Context, work *job.Work, name string, whole problem,
	found answer) (answer, error) {
	var each []problem
	for _, single := range singles(work, name) {
		each = append(each, aloneOn(whole.cloth, single))
	}
	if len(each) == 0 || found.impossible != nil || ctx.Err() != nil {
		return found, nil
	}
	alone, err := s.unlessEnded().all(ctx, each)
	if err != nil {
		return answer{}, err
	}
	if ctx.Err() != nil {
		found.ended.Early = true
		return found, nil
	}
	answers, err := s.notAboveTheSum(ctx, []problem{whole}, []answer{found}, [][]answer{alone})
	if err != nil {
		return answer{}, err
	}
	answers[0].ended = found.ended.And(endedOf(alone))
	return answers[0], nil
}
