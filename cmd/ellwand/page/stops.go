package page

import (
	"context"
	"sync"
)

// stops are searches that whoever asked for them can stop and still be answered, each by a
// word that she gave.
type stops struct {
	mutex sync.Mutex
	going map[string]context.CancelFunc
}

func newStops() *stops { return &stops{going: map[string]context.CancelFunc{}} }

// begin a search that can be stopped by a word; end it when it is over.
func (s *stops) begin(within context.Context, word string) (ctx context.Context, end func()) {
	ctx, cancel := context.WithCancel(within)
	s.mutex.Lock()
	defer s.mutex.Unlock()
	s.going[word] = cancel
	return ctx, func() {
		cancel()
		s.mutex.Lock()
		defer s.mutex.Unlock()
		delete(s.going, word)
	}
}

// end the search of a word, if it still goes on.
func (s *stops) end(word string) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	if cancel := s.going[word]; cancel != nil {
		cancel()
	}
}
