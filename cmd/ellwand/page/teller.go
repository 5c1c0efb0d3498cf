package page

import (
	"encoding/json"
	"sync"
)

// event is told to pages: its name, and what it says as JSON.
type event struct {
	name string
	data []byte
}

// eventOf a value.
func eventOf(name string, value any) event {
	data, err := json.Marshal(value)
	if err != nil {
		data = []byte("{}")
	}
	return event{name, data}
}

// teller tells every page that listens. One that does not keep up misses events; of each
// kind it is told the last one again when it begins to listen.
type teller struct {
	mutex     sync.Mutex
	listeners map[chan event]bool
	closed    bool
}

func newTeller() *teller { return &teller{listeners: map[chan event]bool{}} }

// mostWaiting events for one page; those beyond are dropped [source.OwnChoice].
const mostWaiting = 256

func (t *teller) listen() chan event {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	out := make(chan event, mostWaiting)
	if t.closed {
		close(out)
		return out
	}
	t.listeners[out] = true
	return out
}

func (t *teller) leave(listener chan event) {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	delete(t.listeners, listener)
}

func (t *teller) tell(e event) {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	for listener := range t.listeners {
		select {
		case listener <- e:
		default:
		}
	}
}

func (t *teller) close() {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	t.closed = true
	for listener := range t.listeners {
		close(listener)
		delete(t.listeners, listener)
	}
}
