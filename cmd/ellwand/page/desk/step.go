package desk

import (
	"maps"
	"time"

	"ellwand/pieces/language"
)

// Kind of a step.
type Kind int

// The kinds of steps.
const (
	// Changed a value, or several.
	Changed Kind = iota
	// HalfTyped is a value that does not stand yet.
	HalfTyped
	// Removed a value.
	Removed
	// Converted the job into other units.
	Converted
	// Rewritten as a text.
	Rewritten
	// Placed pieces by hand, or set them free.
	Placed
	// TakenIn from outside.
	TakenIn
	// Begun is how the history begins, before any step.
	Begun
)

var kinds = []string{"changed", "typed", "removed", "units", "text", "placed", "outside", "begun"}

// MarshalText gives the word by which programs tell it.
func (k Kind) MarshalText() ([]byte, error) { return []byte(kinds[k]), nil }

// UnmarshalText reads the word; one that is not known is a change.
func (k *Kind) UnmarshalText(text []byte) error {
	for i, word := range kinds {
		if word == string(text) {
			*k = Kind(i)
		}
	}
	return nil
}

// step is one that can be gone back: what changed of the text and of what is half typed.
type step struct {
	Kind Kind      `json:"kind"`
	Path string    `json:"path,omitempty"`
	When time.Time `json:"when"`
	Text delta     `json:"text"`
	// Typed holds before and after, by path.
	Typed map[string]change `json:"typed,omitempty"`
	// Going says that it is typing that may go on.
	Going bool `json:"going,omitempty"`
}

// change of what is half typed; nil is nothing.
type change struct {
	Old *HalfValue `json:"old,omitempty"`
	New *HalfValue `json:"new,omitempty"`
}

// HalfValue is a value that is typed and does not stand, with what is wrong with it.
type HalfValue struct {
	Path  []any  `json:"path"`
	Value string `json:"value"`
	Fault string `json:"fault"`
	// Kind of the fault, as strict.Kind has it.
	Kind string `json:"kind,omitempty"`
	// Said is the fault in every language; empty of one that was read from the journal.
	Said language.Sentence `json:"-"`
}

// state is what a desk holds at one moment.
type state struct {
	text  []byte
	typed map[string]HalfValue
}

// stepBetween two states.
func stepBetween(before, after state) step {
	out := step{Text: deltaOf(before.text, after.text), Typed: map[string]change{}}
	for key, old := range before.typed {
		if now, is := after.typed[key]; !is || !equal(old, now) {
			c := change{Old: &old}
			if is {
				c.New = &now
			}
			out.Typed[key] = c
		}
	}
	for key, now := range after.typed {
		if _, was := before.typed[key]; !was {
			out.Typed[key] = change{New: &now}
		}
	}
	return out
}

func equal(a, b HalfValue) bool { return a.Value == b.Value && a.Fault == b.Fault }

// isEmpty says that nothing changed.
func (s step) isEmpty() bool {
	return len(s.Text.Old) == 0 && len(s.Text.New) == 0 && len(s.Typed) == 0
}

// after is the state that follows; false where the step is none of this state.
func (s step) after(from state) (state, bool) {
	text, ok := s.Text.apply(from.text)
	typed := maps.Clone(from.typed)
	for key, c := range s.Typed {
		delete(typed, key)
		if c.New != nil {
			if typed == nil {
				typed = map[string]HalfValue{}
			}
			typed[key] = *c.New
		}
	}
	return state{text, typed}, ok
}

// back is the step that undoes this one.
func (s step) back() step {
	out := step{Text: s.Text.back(), Typed: map[string]change{}}
	for key, c := range s.Typed {
		out.Typed[key] = change{c.New, c.Old}
	}
	return out
}
