package above

import "testing"

func TestSign(t *testing.T) {
	if Sign(0) != "none" || Sign(1) != "plus" {
		t.Error(Sign(0), Sign(1))
	}
}
