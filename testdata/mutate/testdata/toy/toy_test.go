package toy

import "testing"

func TestTwice(t *testing.T) {
	if Twice(3) != 6 {
		t.Error(Twice(3))
	}
}
