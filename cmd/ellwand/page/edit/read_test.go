package edit_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/edit"
)

// What is written stays as it is written, money with its noughts above all.
func TestTreeKeepsDigits(t *testing.T) {
	text := "price: 24.50\nrate: 35.00\ncount: 010\nprint: yes\nlist: [1.0, ~]\nnone:\n" +
		"one: &one\n  hours: 6.0\nother: *one\nmerged:\n  <<: *one\n"
	assert.Equal(t, map[string]any{
		"price": "24.50", "rate": "35.00", "count": "010", "print": "yes", "list": []any{"1.0", nil}, "none": nil,
		"one": map[string]any{"hours": "6.0"}, "other": map[string]any{"hours": "6.0"},
		"merged": map[string]any{"hours": "6"},
	}, edit.Tree(text))
	assert.Nil(t, edit.Tree("a: [1"))
	assert.Nil(t, edit.Tree(""))
}
