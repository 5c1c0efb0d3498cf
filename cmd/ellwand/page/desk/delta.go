package desk

import (
	"bytes"
)

// delta is what changed between two texts: in one place, some bytes for others.
type delta struct {
	At  int    `json:"at"`
	Old []byte `json:"old,omitempty"`
	New []byte `json:"new,omitempty"`
}

// deltaOf two texts.
func deltaOf(before, after []byte) delta {
	at := 0
	for at < len(before) && at < len(after) && before[at] == after[at] {
		at++
	}
	end := 0
	for end < len(before)-at && end < len(after)-at && before[len(before)-1-end] == after[len(after)-1-end] {
		end++
	}
	return delta{at, bytes.Clone(before[at : len(before)-end]), bytes.Clone(after[at : len(after)-end])}
}

// apply makes the later text of the earlier one; false where it is none of the two.
func (d delta) apply(text []byte) ([]byte, bool) {
	if d.At < 0 || d.At > len(text) || !bytes.HasPrefix(text[d.At:], d.Old) {
		return nil, false
	}
	out := append(bytes.Clone(text[:d.At]), d.New...)
	return append(out, text[d.At+len(d.Old):]...), true
}

// back is the delta from the later text to the earlier one.
func (d delta) back() delta { return delta{d.At, d.New, d.Old} }
