package page

import (
	"encoding/json"
	"sync"

	"ellwand/pieces/language"
)

// event is told to pages: its name, and what it says as JSON, in the language of each.
type event struct {
	name string
	data func(language.Language) []byte
}

// eventOf a value.
func eventOf(name string, value any) event {
	data := jsonOf(value)
	return event{name, func(language.Language) []byte { return data }}
}

// saidEvent is an event whose value is made in the language of each reader.
func saidEvent(name string, value func(language.Language) any) event {
	return event{name, func(reader language.Language) []byte { return jsonOf(value(reader)) }}
}

func jsonOf(value any) []byte {
	data, err := json.Marshal(value)
	if err != nil {
		return []byte("{}")
	}
	return data
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
