-- What was done to one thing is asked for by pages: when a practice was written from what was tapped, and up to which tap.
CREATE INDEX "AuditEntry_clubId_objectId_idx" ON "AuditEntry"("clubId", "objectId");
