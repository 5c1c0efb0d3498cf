package main

import (
	"context"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
)

// bringIn reads the layouts that somebody brings in for some cloths, and refuses what is
// none.
func (e *env) bringIn(ctx context.Context, work *job.Work, cloths []cloth.Cloth, s *layFlags) error {
	if err := s.from.read(&s.Search); err != nil {
		return err
	}
	return app.CheckFrom(ctx, work, cloths, s.Search)
}
