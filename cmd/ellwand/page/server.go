// Package page is the page in a browser: a server on this machine alone, its files
// embedded. It holds the jobs of one folder on desks, does what the page asks by the use
// cases of app, and tells the page of every change.
package page

import (
	"context"
	"errors"
	"fmt"
	"net"
	"net/http"
	"time"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/page/folder"
)

// Serve the page until the context ends or nobody has it open any more.
func Serve(ctx context.Context, o Options) error {
	f, err := folder.Open(o.Folder)
	if err != nil {
		return err
	}
	listener, err := net.Listen("tcp", fmt.Sprintf("127.0.0.1:%d", o.Port))
	if err != nil {
		_ = f.Close()
		return fmt.Errorf("the page cannot be opened on port %d, since something else is there; leave out --port for a "+
			"free one", o.Port)
	}
	ctx, end := context.WithCancel(ctx)
	defer end()
	s := newServer(ctx, f, o, listener.Addr().String())
	if !o.Stay {
		go s.tabs.endWhenAlone(ctx, end)
	}
	go s.watchFolder(ctx)
	web := &http.Server{
		Handler: s.handler(), ReadHeaderTimeout: 10 * time.Second, MaxHeaderBytes: 64 << 10,
		BaseContext: func(net.Listener) context.Context { return ctx },
	}
	defer s.putUpSign()()
	failed := make(chan error, 1)
	go func() { failed <- web.Serve(listener) }()
	if o.Opened != nil {
		o.Opened(s.door.address())
	}
	select {
	case err = <-failed:
	case <-ctx.Done():
	}
	s.close()
	if closed := web.Close(); err == nil || errors.Is(err, http.ErrServerClosed) {
		err = closed
	}
	return failure.Of(err)
}

// handler of all that can be asked.
func (s *server) handler() http.Handler {
	mux := http.NewServeMux()
	s.siteRoutes(mux)
	s.folderRoutes(mux)
	s.jobRoutes(mux)
	mux.HandleFunc("/", func(w http.ResponseWriter, r *http.Request) {
		answerError(w, r, http.StatusNotFound, "There is nothing at this address.")
	})
	return s.door.guard(caught(mux))
}

// caught answers what nobody foresaw in plain words.
func caught(inside http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		defer func() {
			switch err := recover(); {
			case err == http.ErrAbortHandler:
				panic(err)
			case err != nil:
				answerFault(w, r, failure.Caught(err))
			}
		}()
		inside.ServeHTTP(w, r)
	})
}
