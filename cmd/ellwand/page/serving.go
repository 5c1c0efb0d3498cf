package page

import (
	"context"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page/folder"
)

// Options of the page.
type Options struct {
	// Folder of the jobs, and Port; 0 is any that is free.
	Folder string
	Port   int
	// Search for lays, as the commands have it.
	Search app.Search
	// Stay keeps the page open after its last tab is closed.
	Stay bool
	// Opened is told the address that opens the page.
	Opened func(address string)
}

// server is the page with all that it holds.
type server struct {
	options Options
	folder  *folder.Folder
	door    *door
	tabs    *tabs
	jobs    *jobs
	told    *teller // of the folder
}

func newServer(ctx context.Context, f *folder.Folder, o Options, host string) *server {
	return &server{
		options: o, folder: f, door: newDoor(host), tabs: newTabs(), jobs: newJobs(ctx, f, o.Search), told: newTeller(),
	}
}

// close what is held.
func (s *server) close() { s.jobs.close() }
