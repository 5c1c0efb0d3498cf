package main

import (
	"context"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
)

// bringIn reads the layouts that somebody brings in for some cloths, and refuses what is
// none.
func (f *fromFlags) bringIn(ctx context.Context, work *job.Work, cloths []cloth.Cloth, search *app.Search) error {
	if err := f.read(search); err != nil {
		return err
	}
	return app.CheckFrom(ctx, work, cloths, *search)
}
