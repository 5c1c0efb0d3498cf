package page

import (
	"context"
	"sync/atomic"

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
	// Sign is the file in which a page says where it is open, so that a second start finds
	// it; none where it is empty.
	Sign string
	// Chosen is told the folder that is chosen on the page; may be nil.
	Chosen func(folder string)
}

// server is the page with all that it holds.
type server struct {
	ctx     context.Context
	options Options
	door    *door
	tabs    *tabs
	told    *teller // of the folder
	place   atomic.Pointer[workplace]
	// drawn is the picture of the drawing that was looked at last.
	drawn atomic.Pointer[[]byte]
}

// workplace is the folder that is open, with its jobs.
type workplace struct {
	folder *folder.Folder
	jobs   *jobs
}

func newServer(ctx context.Context, f *folder.Folder, o Options, host string) *server {
	s := &server{ctx: ctx, options: o, door: newDoor(host), tabs: newTabs(), told: newTeller()}
	s.open(f)
	return s
}

// now is where work is done.
func (s *server) now() *workplace { return s.place.Load() }

// open another folder; what was open in the one before is put away.
func (s *server) open(f *folder.Folder) {
	before := s.place.Swap(&workplace{f, newJobs(s.ctx, f, s.options.Search)})
	if before != nil {
		before.close()
	}
}

func (w *workplace) close() {
	w.jobs.close()
	_ = w.folder.Close() // it was only read from
}

// close what is held.
func (s *server) close() {
	s.told.close()
	s.now().close()
}
